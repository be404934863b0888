import { simulate } from '../simulated/index.ts';
import { button, onScreen, readCautions, startHunt } from './hunting.ts';
import { playUntilAnswered, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

const hostile = '<img src=x onerror="document.title=\'run\'"><script>document.title="run"</script>';
const wiring = /one humbucker, one volume/i;

test('no request leaves the origin in a whole hunt, and a name that is markup stays text', async ({
  app,
  page,
  complaints,
}) => {
  test.setTimeout(120_000);
  const { origin } = new URL(app.address);
  const asked: string[] = [];
  page.context().on('request', (request) => asked.push(request.url()));
  await page.goto(app.address);
  await startHunt(page, { wiring, title: hostile, open: true });
  await expect(page.locator('.strip-title')).toHaveText(hostile);
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  await playUntilAnswered(page, simulate(circuit, [{ op: 'open', site: 'hot@to' }], 'safety'));
  await page.locator('.strip-job').click();
  await page.goto(`${app.address}#/`);
  await onScreen(page, 'home');
  await expect(page.getByText(hostile).first()).toBeVisible();
  expect(await page.title()).not.toBe('run');
  expect(asked.length).toBeGreaterThan(5);
  expect(
    asked.filter((url) => !/^(data|blob):/.test(url) && !url.startsWith(`${origin}/`)),
  ).toEqual([]);
  expect(complaints).toEqual([]);
});

test('the page runs nothing but its own files, and talks to nobody else', async ({ app, page }) => {
  await page.goto(app.address);
  await onScreen(page, 'home');
  const refused = await page.evaluate(async (elsewhere) => {
    const told: string[] = [];
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) =>
      told.push(effectiveDirective),
    );
    const script = document.createElement('script');
    script.textContent = 'document.title = "run"';
    document.body.append(script);
    const foreign = document.createElement('script');
    foreign.src = `${elsewhere}script.js`;
    document.body.append(foreign);
    const frame = document.createElement('iframe');
    frame.src = elsewhere;
    document.body.append(frame);
    const button = document.createElement('button');
    button.setAttribute('onclick', 'document.title = "run"');
    document.body.append(button);
    button.click();
    const image = new Image();
    image.src = `${elsewhere}picture.png`;
    const sent = await fetch(elsewhere).then(
      () => 'sent',
      () => 'refused',
    );
    await new Promise((resolve) => setTimeout(resolve, 200));
    return { told, sent, title: document.title };
  }, 'http://127.0.0.1:9/');
  expect(refused.sent).toBe('refused');
  expect(refused.title).not.toBe('run');
  expect(new Set(refused.told)).toEqual(
    new Set(['script-src-elem', 'script-src-attr', 'frame-src', 'img-src', 'connect-src']),
  );
});
