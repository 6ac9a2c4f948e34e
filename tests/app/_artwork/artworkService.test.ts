// @vitest-environment node
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createArtworkService, type PictureNews } from '@/app/_artwork/artworkService';
import type { PictureQuestion, PictureReply } from '@/app/_artwork/messages';

class StubWorker {
  readonly asked: PictureQuestion[] = [];
  isEnded = false;
  onmessage: ((event: { data: PictureReply }) => void) | null = null;
  onerror: ((event: { message: string; preventDefault: () => void }) => void) | null = null;
  postMessage(question: PictureQuestion) {
    this.asked.push(question);
  }
  terminate() {
    this.isEnded = true;
  }
  say(reply: PictureReply) {
    this.onmessage?.({ data: reply });
  }
}

function service() {
  const workers: StubWorker[] = [];
  const made = createArtworkService(() => {
    const worker = new StubWorker();
    workers.push(worker);
    return worker as unknown as Worker;
  });
  const news: PictureNews[] = [];
  const read = () =>
    made.read(new Blob(['x']), { printWidthMm: 200, crop: null }, (piece) => news.push(piece));
  return { workers, news, read, stop: made.stop };
}

const refused = (number: number): PictureReply => ({ kind: 'refused', number, problem: { kind: 'empty' } });
const progress = (number: number): PictureReply => ({ kind: 'progress', number, stage: 'reading', share: 0 });

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('the artwork service of the page', () => {
  it('starts a worker with the first picture and keeps it', () => {
    const { workers, read, news } = service();
    expect(workers).toHaveLength(0);
    read();
    workers[0]?.say(progress(1));
    workers[0]?.say(refused(1));
    read();
    expect(workers).toHaveLength(1);
    expect(news.map(({ kind }) => kind)).toEqual(['progress', 'refused']);
  });

  it('tells the older picture it is cancelled, and drops what still comes of it', () => {
    const { workers, read, news } = service();
    read();
    read();
    workers[0]?.say(refused(1));
    workers[0]?.say(refused(2));
    expect(news).toEqual([{ kind: 'cancelled', number: 1 }, refused(2)]);
  });

  it('cancels at once, and tells nothing afterwards', () => {
    const { workers, read, news } = service();
    const { cancel } = read();
    cancel();
    cancel();
    workers[0]?.say({ kind: 'cancelled', number: 1 });
    workers[0]?.say(progress(1));
    vi.advanceTimersByTime(10_000);
    expect(news).toEqual([{ kind: 'cancelled', number: 1 }]);
    expect(workers[0]?.asked.map(({ kind }) => kind)).toEqual(['read', 'cancel']);
    expect(workers[0]?.isEnded).toBe(false);
  });

  it('ends a worker that does not hear a cancel, and starts another for the next picture', () => {
    const { workers, read, news } = service();
    read().cancel();
    vi.advanceTimersByTime(1_001);
    expect(workers[0]?.isEnded).toBe(true);
    read();
    workers[1]?.say(refused(2));
    expect(news.at(-1)).toEqual(refused(2));
  });

  it('does not let the next picture wait behind a worker that has not heard a cancel yet', () => {
    const { workers, read, news } = service();
    read().cancel();
    read();
    vi.advanceTimersByTime(10_000);
    expect(workers).toHaveLength(2);
    expect(workers[1]?.isEnded).toBe(false);
    workers[1]?.say(refused(2));
    expect(news.at(-1)).toEqual(refused(2));
  });

  it('lets a picture wait for a worker that could not start, and reads it once one could', () => {
    const { workers, read, news } = service();
    read();
    workers[0]?.onerror?.({ message: '', preventDefault: () => undefined });
    expect(news).toEqual([{ kind: 'notStarted', number: 1, isGone: false, again: expect.any(Function) }]);
    vi.advanceTimersByTime(1_000);
    expect(workers[1]?.asked).toEqual(workers[0]?.asked);
    workers[1]?.say(refused(1));
    expect(news.at(-1)).toEqual(refused(1));
  });

  it('tries a worker that could not start at once when it is asked to', () => {
    const { workers, read, news } = service();
    read();
    workers[0]?.onerror?.({ message: '', preventDefault: () => undefined });
    const [waiting] = news;
    if (waiting?.kind === 'notStarted') waiting.again();
    expect(workers[1]?.asked.map(({ kind }) => kind)).toEqual(['read']);
  });

  it('lets go of a picture that waits for a worker when that is wanted', () => {
    const { workers, read, news } = service();
    const { cancel } = read();
    workers[0]?.onerror?.({ message: '', preventDefault: () => undefined });
    cancel();
    vi.advanceTimersByTime(100_000);
    expect(news.at(-1)).toEqual({ kind: 'cancelled', number: 1 });
    expect(workers).toHaveLength(1);
  });

  it('tells a worker that broke down, and starts anew', () => {
    const { workers, read, news } = service();
    read();
    workers[0]?.say(progress(1));
    news.length = 0;
    workers[0]?.onerror?.({ message: 'lost', preventDefault: () => undefined });
    expect(news).toEqual([{ kind: 'failed', number: 1, why: 'lost' }]);
    read();
    expect(workers).toHaveLength(2);
  });

  it('is silent once stopped', () => {
    const { workers, read, news, stop } = service();
    read();
    stop();
    workers[0]?.say(refused(1));
    expect(news).toEqual([]);
    expect(workers[0]?.isEnded).toBe(true);
  });
});
