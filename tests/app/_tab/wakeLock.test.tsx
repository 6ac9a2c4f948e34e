// @vitest-environment jsdom
import { act, cleanup, renderHook } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { useWakeLock } from '@/app/_tab/useWakeLock';

/** What a browser gives: it is let go of by whoever asked, or by the browser itself. */
class Lock extends EventTarget {
  released = false;
  async release(): Promise<void> {
    if (this.released) return;
    this.released = true;
    this.dispatchEvent(new Event('release'));
  }
}

/** Each lock that was given, and how the phone answers. */
let given: Lock[] = [];
let isRefused = false;
let isShown = true;
let asked: string[] = [];

/** Waits until the phone is told to answer. */
let answer: Promise<void> = Promise.resolve();

const locks = {
  async request(kind: string): Promise<Lock> {
    asked.push(kind);
    await answer;
    if (isRefused) throw new DOMException('the battery is low', 'NotAllowedError');
    const lock = new Lock();
    given.push(lock);
    return lock;
  },
};

const withLocks = (value: unknown) =>
  Object.defineProperty(navigator, 'wakeLock', { value, configurable: true });

/** The page is hidden, by which a browser takes every lock back, or shown again. */
const show = (shown: boolean) =>
  act(async () => {
    isShown = shown;
    if (!shown) await Promise.all(given.map((lock) => lock.release()));
    document.dispatchEvent(new Event('visibilitychange'));
  });

async function counting() {
  const { result, unmount } = renderHook(() => useWakeLock());
  await act(async () => {
    await answer;
  });
  return { state: () => result.current, unmount };
}

const held = () => given.filter(({ released }) => !released).length;

beforeEach(() => {
  given = [];
  asked = [];
  isRefused = false;
  isShown = true;
  answer = Promise.resolve();
  withLocks(locks);
  Object.defineProperty(document, 'visibilityState', {
    get: () => (isShown ? 'visible' : 'hidden'),
    configurable: true,
  });
});
afterEach(() => {
  cleanup();
  Reflect.deleteProperty(navigator, 'wakeLock');
  Reflect.deleteProperty(document, 'visibilityState');
});

describe('the screen at the count', () => {
  it('is kept awake from the beginning, and let go of once the count is left', async () => {
    const { state, unmount } = await counting();
    expect([asked, state(), held()]).toEqual([['screen'], 'awake', 1]);
    unmount();
    expect(held()).toBe(0);
  });

  it('is asked for again whenever the page is shown, not while it is hidden and not twice', async () => {
    const { state } = await counting();
    await show(false);
    expect([asked.length, held()]).toEqual([1, 0]);
    await show(true);
    expect([asked.length, held(), state()]).toEqual([2, 1, 'awake']);
    await show(true);
    expect([asked.length, held()]).toEqual([2, 1]);
  });

  it('may be refused, which is said, and is asked for again when the page is shown', async () => {
    isRefused = true;
    const { state } = await counting();
    expect([state(), held()]).toEqual(['refused', 0]);
    isRefused = false;
    await show(false);
    await show(true);
    expect([state(), held()]).toEqual(['awake', 1]);
  });

  it('is not said to stay awake once the phone took that back while it is shown', async () => {
    const { state } = await counting();
    await act(async () => given[0]?.release());
    expect(state()).toBe('refused');
    await show(true);
    expect([state(), held()]).toEqual(['awake', 1]);
  });

  it('is let go of where the answer comes after the count was left', async () => {
    let tell: () => void = () => undefined;
    answer = new Promise((resolve) => {
      tell = resolve;
    });
    const { unmount } = renderHook(() => useWakeLock());
    unmount();
    await act(async () => tell());
    expect([given.length, held()]).toEqual([1, 0]);
  });

  it('is asked for once while the phone has not answered, so that none is left behind', async () => {
    let tell: () => void = () => undefined;
    answer = new Promise((resolve) => {
      tell = resolve;
    });
    const { result, unmount } = renderHook(() => useWakeLock());
    await show(true);
    await act(async () => tell());
    expect([asked.length, result.current]).toEqual([1, 'awake']);
    unmount();
    expect(held()).toBe(0);
  });

  it('is not known to stay awake where the browser cannot', async () => {
    withLocks(undefined);
    const { state } = await counting();
    expect([state(), asked]).toEqual(['unknown', []]);
    await show(true);
    expect(asked).toEqual([]);
  });
});
