import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

type Listener = () => void;
/** Workers are told apart by which one they are. */
type Registration = Partial<Record<'active' | 'waiting' | 'installing', string>>;

/** Stands in for the browser's side. What a browser does of itself is tested end to end. */
const browser = vi.hoisted(() => ({
  listeners: new Map<string, Listener>(),
  skipWaiting: vi.fn(),
  askForNewer: vi.fn(() => Promise.resolve()),
  registration: {} as Registration,
  register: vi.fn(),
}));

vi.mock('workbox-window', () => ({
  Workbox: class {
    addEventListener = (name: string, listener: Listener) => browser.listeners.set(name, listener);
    register = browser.register;
    messageSkipWaiting = browser.skipWaiting;
    update = browser.askForNewer;
  },
}));

describe('keeping the app offline', () => {
  const reload = vi.fn();
  const workers = {
    ready: Promise.resolve(),
    controller: null as string | null,
    getRegistration: async () => browser.registration,
  };
  let comeIntoView: () => void;

  beforeEach(() => {
    vi.resetModules();
    vi.useFakeTimers();
    vi.stubGlobal('window', { location: { reload } });
    vi.stubGlobal('navigator', { serviceWorker: workers });
    const kept = new Map<string, string>();
    vi.stubGlobal('sessionStorage', {
      setItem: (key: string, value: string) => kept.set(key, value),
      getItem: (key: string) => kept.get(key) ?? null,
      removeItem: (key: string) => kept.delete(key),
    });
    workers.controller = 'running';
    browser.registration = { active: 'running' };
    browser.register.mockImplementation(async () => browser.registration);
    vi.stubGlobal('document', {
      visibilityState: 'visible',
      addEventListener: (_name: string, listener: () => void) => {
        comeIntoView = listener;
      },
    });
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
    vi.clearAllMocks();
  });

  const started = async () => {
    const update = await import('./update.ts');
    await update.keepOffline();
    return update;
  };
  const waits = async () => {
    await browser.listeners.get('waiting')?.();
  };
  /** A newer version waits, and the player has agreed to it. */
  const agreed = async () => {
    const { acceptUpdate } = await started();
    browser.registration.waiting = 'newer';
    await waits();
    acceptUpdate();
  };
  const takesControl = (by: string) => {
    workers.controller = by;
    browser.listeners.get('controlling')?.();
  };

  it('is ready once the service worker is', async () => {
    expect((await started()).offlineState.value).toBe('ready');
  });

  it('says so when the browser refuses the service worker', async () => {
    browser.register.mockRejectedValueOnce(new Error('certificate'));
    expect((await started()).offlineState.value).toBe('unavailable');
  });

  it('takes a waiting version into use on consent alone, and then opens again', async () => {
    const { acceptUpdate, updateWaiting } = await started();
    browser.registration.waiting = 'newer';
    await waits();
    expect(updateWaiting.value).toBe(true);
    expect(browser.skipWaiting).not.toHaveBeenCalled();

    acceptUpdate();
    expect(browser.skipWaiting).toHaveBeenCalledOnce();
    expect(reload).not.toHaveBeenCalled();
    takesControl('newer');
    expect(reload).toHaveBeenCalledOnce();
  });

  it('opens again when the newer version cannot take over, since a request may still hold the running one', async () => {
    await agreed();
    vi.advanceTimersByTime(3000);
    expect(reload).not.toHaveBeenCalled();
    vi.advanceTimersByTime(2000);
    expect(reload).toHaveBeenCalledOnce();
  });

  it('opens once more where that version took over while the page was on its way', async () => {
    await agreed();
    vi.advanceTimersByTime(5000);
    vi.resetModules();
    workers.controller = 'newer';
    browser.registration = { active: 'newer' };
    await started();
    expect(reload).toHaveBeenCalledTimes(2);
    vi.resetModules();
    await started();
    expect(reload).toHaveBeenCalledTimes(2);
  });

  it('asks again and again until the newer version takes over', async () => {
    await agreed();
    vi.advanceTimersByTime(1000);
    expect(browser.skipWaiting).toHaveBeenCalledTimes(4);
    vi.advanceTimersByTime(5000);
    const asked = browser.skipWaiting.mock.calls.length;
    vi.advanceTimersByTime(5000);
    expect(browser.skipWaiting).toHaveBeenCalledTimes(asked);
  });

  it('does not open once more where it waits still, but asks once more', async () => {
    await agreed();
    vi.advanceTimersByTime(5000);
    vi.resetModules();
    const { updateWaiting } = await started();
    await waits();
    expect(updateWaiting.value).toBe(true);
    expect(reload).toHaveBeenCalledOnce();
    const asked = browser.skipWaiting.mock.calls.length;
    vi.advanceTimersByTime(1500);
    expect(browser.skipWaiting.mock.calls.length).toBeGreaterThan(asked);
    takesControl('newer');
    expect(reload).toHaveBeenCalledTimes(2);
  });

  it('leaves the screen alone where it takes over long after it was agreed to', async () => {
    await agreed();
    vi.advanceTimersByTime(5000);
    vi.resetModules();
    const { updateWaiting } = await started();
    vi.advanceTimersByTime(10_000);
    takesControl('newer');
    expect(updateWaiting.value).toBe(true);
    expect(reload).toHaveBeenCalledOnce();
  });

  it('leaves a tab that did not agree as it is, and lets it follow when it does', async () => {
    const { acceptUpdate, updateWaiting } = await started();
    takesControl('newer');
    expect(reload).not.toHaveBeenCalled();
    expect(updateWaiting.value).toBe(true);

    acceptUpdate();
    expect(reload).toHaveBeenCalledOnce();
    expect(browser.skipWaiting).not.toHaveBeenCalled();
  });

  it.each([
    ['on the first opening, or while it is being installed on the second', { installing: 'first' }],
    ['where the page is opened again while it is about to start', { waiting: 'first' }],
    ['where the page is opened again before it took over', { active: 'first' }],
  ])('takes the first service worker ever for no update %s', async (_, registration) => {
    workers.controller = null;
    browser.registration = registration;
    const { updateWaiting } = await started();
    await waits();
    expect(updateWaiting.value).toBe(false);
    browser.registration = { active: 'first' };
    await waits();
    takesControl('first');
    expect(updateWaiting.value).toBe(false);
    expect(reload).not.toHaveBeenCalled();
  });

  it('offers the newer version that takes over a page which no version controlled', async () => {
    workers.controller = null;
    browser.registration = { active: 'running' };
    const { updateWaiting } = await started();
    takesControl('newer');
    expect(updateWaiting.value).toBe(true);
    expect(reload).not.toHaveBeenCalled();
  });

  it('asks for a newer version when it comes into view, no oftener than every six hours', async () => {
    await started();
    comeIntoView();
    expect(browser.askForNewer).not.toHaveBeenCalled();
    vi.advanceTimersByTime(6.1 * 3_600_000);
    comeIntoView();
    comeIntoView();
    expect(browser.askForNewer).toHaveBeenCalledOnce();
  });
});
