// @vitest-environment node
import { describe, expect, it, vi } from 'vitest';
import type { TransferQuestion, TransferReply } from '@/app/_transfers/messages';
import { type TransferNews, writeTransfers } from '@/app/_transfers/writeTransfers';

const job = { title: 'Club shirts', widthMm: 210, sheets: [] };

class StubWorker {
  readonly asked: TransferQuestion[] = [];
  isEnded = false;
  onmessage: ((event: { data: TransferReply }) => void) | null = null;
  onerror: ((event: { message: string; preventDefault: () => void }) => void) | null = null;
  postMessage(question: TransferQuestion) {
    this.asked.push(question);
  }
  terminate() {
    this.isEnded = true;
  }
  say(reply: TransferReply) {
    this.onmessage?.({ data: reply });
  }
}

function writing(readFile: (key: string) => Promise<Blob | null> = async () => new Blob(['x'])) {
  const workers: StubWorker[] = [];
  const news: TransferNews[] = [];
  const cancel = writeTransfers(job, {
    readFile,
    onNews: (piece) => void news.push(piece),
    startWorker: () => {
      const worker = new StubWorker();
      workers.push(worker);
      return worker as unknown as Worker;
    },
  });
  return { workers, news, cancel };
}

const written: TransferReply = { kind: 'written', file: new Blob(['pdf']), lost: [], notes: new Map() };

describe('writing transfers from the page', () => {
  it('brings each picture when it is asked for, and ends the worker with the file', async () => {
    const { workers, news } = writing(async (key) => (key === 'gone' ? null : new Blob([key])));
    const [worker] = workers;
    expect(worker?.asked).toEqual([{ kind: 'write', job }]);
    worker?.say({ kind: 'fileWanted', key: 'gone' });
    await expect.poll(() => worker?.asked.at(-1)).toEqual({ kind: 'file', file: null });
    worker?.say({ kind: 'progress', share: 0.5 });
    worker?.say(written);
    expect(news).toEqual([{ kind: 'progress', share: 0.5 }, written]);
    expect(worker?.isEnded).toBe(true);
  });

  it('is stopped at once, in the middle of whatever it is at, and says nothing afterwards', async () => {
    let bring: (file: Blob) => void = () => undefined;
    const { workers, news, cancel } = writing(() => new Promise((resolve) => (bring = resolve)));
    const [worker] = workers;
    worker?.say({ kind: 'fileWanted', key: 'a' });
    cancel();
    cancel();
    expect(worker?.isEnded).toBe(true);
    bring(new Blob(['late']));
    worker?.say(written);
    await Promise.resolve();
    expect(news).toEqual([]);
    expect(worker?.asked).toHaveLength(1);
    expect(workers).toHaveLength(1);
  });

  it('says what happened where a picture cannot be brought or the worker breaks down', async () => {
    const { workers, news } = writing(() => Promise.reject(new Error('the disk is full')));
    workers[0]?.say({ kind: 'fileWanted', key: 'a' });
    await expect.poll(() => news).toEqual([{ kind: 'failed', why: 'the disk is full' }]);
    const broken = writing();
    broken.workers[0]?.say({ kind: 'progress', share: 0.1 });
    broken.workers[0]?.onerror?.({ message: 'no memory is left', preventDefault: () => undefined });
    expect(broken.news.at(-1)).toEqual({ kind: 'failed', why: 'no memory is left' });
  });

  it('waits where its part of the app did not come, and writes when it can be had', () => {
    vi.useFakeTimers();
    vi.stubGlobal('fetch', () => Promise.reject(new Error('no network')));
    const { workers, news } = writing();
    workers[0]?.onerror?.({ message: '', preventDefault: () => undefined });
    const [told] = news;
    expect(told).toMatchObject({ kind: 'notStarted', isGone: false });
    if (told?.kind === 'notStarted') told.again();
    expect(workers).toHaveLength(2);
    expect(workers[1]?.asked).toEqual([{ kind: 'write', job }]);
    workers[1]?.say(written);
    expect(news.at(-1)).toEqual(written);
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });
});
