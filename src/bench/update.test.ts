import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

type Listener = (event: { isUpdate?: boolean; isExternal?: boolean }) => void;

/** Stands in for the browser's side. What a browser does of itself is tested end to end. */
const browser = vi.hoisted(() => ({
  listeners: new Map<string, Listener>(),
  skipWaiting: vi.fn(),
  askForNewer: vi.fn(() => Promise.resolve()),
  register: vi.fn(() => Promise.resolve()),
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
  let comeIntoView: () => void;

  beforeEach(() => {
    vi.resetModules();
    vi.useFakeTimers();
    vi.stubGlobal('window', { location: { reload } });
    vi.stubGlobal('navigator', { serviceWorker: { ready: Promise.resolve() } });
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
  const happens = (name: string, event: Parameters<Listener>[0] = {}) =>
    browser.listeners.get(name)?.(event);

  it('is ready once the service worker is', async () => {
    expect((await started()).offlineState.value).toBe('ready');
  });

  it('says so when the browser refuses the service worker', async () => {
    browser.register.mockRejectedValueOnce(new Error('certificate'));
    expect((await started()).offlineState.value).toBe('unavailable');
  });

  it('takes a waiting version into use on consent alone, and then opens again', async () => {
    const { acceptUpdate, updateWaiting } = await started();
    happens('waiting');
    expect(updateWaiting.value).toBe(true);
    expect(browser.skipWaiting).not.toHaveBeenCalled();

    acceptUpdate();
    expect(browser.skipWaiting).toHaveBeenCalledOnce();
    expect(reload).not.toHaveBeenCalled();
    happens('controlling', { isUpdate: true });
    expect(reload).toHaveBeenCalledOnce();
  });

  it('leaves a tab that did not agree as it is, and lets it follow when it does', async () => {
    const { acceptUpdate, updateWaiting } = await started();
    happens('controlling', { isExternal: true });
    expect(reload).not.toHaveBeenCalled();
    expect(updateWaiting.value).toBe(true);

    acceptUpdate();
    expect(reload).toHaveBeenCalledOnce();
    expect(browser.skipWaiting).not.toHaveBeenCalled();
  });

  it('takes the first service worker ever for no update', async () => {
    const { updateWaiting } = await started();
    happens('controlling', { isUpdate: false, isExternal: false });
    expect(updateWaiting.value).toBe(false);
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
