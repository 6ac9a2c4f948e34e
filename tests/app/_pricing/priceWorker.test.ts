import { afterEach, beforeEach, expect, test, vi } from 'vitest';

class FakeWorker extends EventTarget {
  static made: FakeWorker[] = [];
  onmessage: ((event: MessageEvent) => void) | null = null;
  onerror: ((event: Event) => void) | null = null;
  constructor() {
    super();
    FakeWorker.made.push(this);
    this.addEventListener('message', (event) => {
      if (event instanceof MessageEvent) this.onmessage?.(event);
    });
  }
  says(data: unknown): void {
    this.dispatchEvent(new MessageEvent('message', { data }));
  }
}

beforeEach(() => {
  FakeWorker.made = [];
  vi.resetModules();
  vi.stubGlobal('Worker', FakeWorker);
});
afterEach(() => vi.unstubAllGlobals());

const load = () => import('@/app/_pricing/priceWorker');

test('a worker that was warmed is the one that is asked, and its owner hears that it runs', async () => {
  const { warmPriceWorker, startPriceWorker } = await load();
  warmPriceWorker();
  FakeWorker.made[0]?.says({ kind: 'ready' });
  const worker = startPriceWorker();
  const heard = vi.fn();
  worker.onmessage = ({ data }) => heard(data);
  await Promise.resolve();
  expect(worker).toBe(FakeWorker.made[0]);
  expect(heard).toHaveBeenCalledExactlyOnceWith({ kind: 'ready' });
});

test('one that is still on its way says itself that it runs', async () => {
  const { warmPriceWorker, startPriceWorker } = await load();
  warmPriceWorker();
  const worker = startPriceWorker();
  const heard = vi.fn();
  worker.onmessage = ({ data }) => heard(data);
  await Promise.resolve();
  expect(heard).not.toHaveBeenCalled();
  FakeWorker.made[0]?.says({ kind: 'ready' });
  expect(heard).toHaveBeenCalledExactlyOnceWith({ kind: 'ready' });
});

test('one whose script did not come is not handed on: whoever asks starts another', async () => {
  const { warmPriceWorker, startPriceWorker } = await load();
  warmPriceWorker();
  FakeWorker.made[0]?.onerror?.(new Event('error'));
  expect(startPriceWorker()).toBe(FakeWorker.made[1]);
});

test('a warm worker has one owner; the next gets one of its own', async () => {
  const { warmPriceWorker, startPriceWorker } = await load();
  warmPriceWorker();
  warmPriceWorker();
  expect(FakeWorker.made).toHaveLength(1);
  expect(startPriceWorker()).not.toBe(startPriceWorker());
});
