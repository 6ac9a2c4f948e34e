import { beforeEach, describe, expect, it, vi } from 'vitest';
import { eventually } from '@/tests/tools/eventually';

const store = vi.hoisted(() => ({ flush: vi.fn(), state: { status: 'ready', kept: { state: 'kept' } } }));
vi.mock('@/app/_store/appDocuments', () => ({
  appDocuments: () => ({ flush: store.flush, getState: () => store.state }),
}));

/** A worker on its way, told of by events. */
class OnItsWay extends EventTarget {
  state = 'installing';
  readonly postMessage = vi.fn();
  finish() {
    this.state = 'installed';
    this.dispatchEvent(new Event('statechange'));
  }
}

class Registration extends EventTarget {
  installing: OnItsWay | null = null;
  waiting: OnItsWay | null = null;
  active: object | null = null;
  readonly update = vi.fn(async () => undefined);
  /** A newer version is found, fetched, and waits. */
  install() {
    const fresh = new OnItsWay();
    this.installing = fresh;
    this.dispatchEvent(new Event('updatefound'));
    this.installing = null;
    this.waiting = fresh;
    fresh.finish();
    return fresh;
  }
}

const reload = vi.fn();
let registration: Registration;
let workers: EventTarget & { controller: object | null; register: () => Promise<Registration> };
let isTyping: boolean;

beforeEach(() => {
  vi.resetModules();
  reload.mockReset();
  store.state = { status: 'ready', kept: { state: 'kept' } };
  isTyping = false;
  registration = new Registration();
  workers = Object.assign(new EventTarget(), { controller: null, register: async () => registration });
  const session = new Map<string, string>();
  vi.stubGlobal('ServiceWorker', OnItsWay);
  vi.stubGlobal('navigator', { serviceWorker: workers });
  vi.stubGlobal('window', { location: { reload } });
  vi.stubGlobal(
    'document',
    Object.assign(new EventTarget(), {
      activeElement: { matches: () => isTyping },
      visibilityState: 'visible',
    }),
  );
  vi.stubGlobal('sessionStorage', {
    getItem: (key: string) => session.get(key) ?? null,
    setItem: (key: string, value: string) => session.set(key, value),
  });
});

/** A page that is open; `wasKept` where a version was on the device when it opened. */
async function openedPage({ wasKept }: Readonly<{ wasKept: boolean }>) {
  if (wasKept) {
    workers.controller = {};
    registration.active = {};
  }
  const versions = await import('@/app/_offline/versions');
  await versions.keepApp();
  return versions;
}

const tookOver = (build: string) =>
  workers.dispatchEvent(new MessageEvent('message', { data: { kind: 'tookOver', build } }));

it('tells nothing of the first version, neither when it is fetched nor when it takes over', async () => {
  const { newerVersion } = await openedPage({ wasKept: false });
  registration.install();
  workers.dispatchEvent(new Event('controllerchange'));
  tookOver('first');
  await eventually(() => expect(newerVersion()).toBe('none'));
  expect(reload).not.toHaveBeenCalled();
});

it('tells a newer version that waits, and one that waited already when the page opened', async () => {
  const { newerVersion } = await openedPage({ wasKept: true });
  expect(newerVersion()).toBe('none');
  registration.install();
  expect(newerVersion()).toBe('waiting');
  vi.resetModules();
  expect((await openedPage({ wasKept: true })).newerVersion()).toBe('waiting');
});

it('lets the newer version take over once all is written, and opens the page anew only then', async () => {
  const { takeNewerVersion } = await openedPage({ wasKept: true });
  const fresh = registration.install();
  const order: string[] = [];
  store.flush.mockImplementation(async () => order.push('written'));
  fresh.postMessage.mockImplementation(() => order.push('told'));
  await takeNewerVersion();
  expect(order).toEqual(['written', 'told']);
  expect(fresh.postMessage).toHaveBeenCalledWith({ type: 'SKIP_WAITING' });
  expect(reload).not.toHaveBeenCalled();
  workers.dispatchEvent(new Event('controllerchange'));
  await eventually(() => expect(reload).toHaveBeenCalledOnce());
});

describe('a newer version that is taken', () => {
  beforeEach(() => {
    vi.useFakeTimers();
    return () => void vi.useRealTimers();
  });

  it('opens the page anew though the one before does not let go, and can be taken again where the page stays', async () => {
    const { newerVersion, takeNewerVersion } = await openedPage({ wasKept: true });
    registration.install();
    await takeNewerVersion();
    expect(newerVersion()).toBe('taking');
    expect(reload).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(5000);
    expect(reload).toHaveBeenCalledOnce();
    await vi.advanceTimersByTimeAsync(10_000);
    expect(newerVersion()).toBe('waiting');
  });

  it('opens the page anew once more where nothing loads, as when it takes over at that very moment', async () => {
    const { newerVersion, takeNewerVersion } = await openedPage({ wasKept: true });
    registration.install();
    await takeNewerVersion();
    await vi.advanceTimersByTimeAsync(5000);
    workers.dispatchEvent(new Event('controllerchange'));
    tookOver('second');
    await vi.advanceTimersByTimeAsync(4900);
    expect(reload).toHaveBeenCalledOnce();
    await vi.advanceTimersByTimeAsync(100);
    expect(reload).toHaveBeenCalledTimes(2);
    expect(newerVersion()).toBe('taking');
    // The page stays all the same: it is opened when that is asked for again.
    await vi.advanceTimersByTimeAsync(5000);
    expect(newerVersion()).toBe('waiting');
    registration.waiting = null;
    await takeNewerVersion();
    expect(reload).toHaveBeenCalledTimes(3);
  });

  it('waits with opening the page anew while something typed since is not kept', async () => {
    const { newerVersion, takeNewerVersion } = await openedPage({ wasKept: true });
    registration.install();
    await takeNewerVersion();
    store.state = { status: 'ready', kept: { state: 'keeping' } };
    workers.dispatchEvent(new Event('controllerchange'));
    await vi.advanceTimersByTimeAsync(0);
    expect(newerVersion()).toBe('notKept');
    expect(reload).not.toHaveBeenCalled();
  });
});

it('takes nothing while something typed cannot be kept', async () => {
  const { newerVersion, takeNewerVersion } = await openedPage({ wasKept: true });
  const fresh = registration.install();
  store.state = { status: 'ready', kept: { state: 'notKept' } };
  await takeNewerVersion();
  expect(newerVersion()).toBe('notKept');
  expect(fresh.postMessage).not.toHaveBeenCalled();
});

it('follows what another tab took, once for each build', async () => {
  const { newerVersion } = await openedPage({ wasKept: true });
  tookOver('second');
  await eventually(() => expect(reload).toHaveBeenCalledOnce());
  tookOver('second');
  await eventually(() => expect(newerVersion()).toBe('elsewhere'));
  expect(reload).toHaveBeenCalledOnce();
});

it('stays where somebody types or something is not kept, says so, and opens the newer one at a press', async () => {
  const { newerVersion, takeNewerVersion } = await openedPage({ wasKept: true });
  isTyping = true;
  tookOver('second');
  await eventually(() => expect(newerVersion()).toBe('elsewhere'));
  expect(reload).not.toHaveBeenCalled();
  await takeNewerVersion();
  expect(reload).toHaveBeenCalledOnce();
});

it('says nothing where the app cannot be kept, and asks nothing of a worker that is not there', async () => {
  workers.register = () => Promise.reject(new DOMException('no room', 'QuotaExceededError'));
  const { newerVersion } = await openedPage({ wasKept: false });
  expect(newerVersion()).toBe('none');
  expect(reload).not.toHaveBeenCalled();
});
