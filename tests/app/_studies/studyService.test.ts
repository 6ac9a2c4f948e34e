import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { StudyReply, StudyRequest } from '@/app/_studies/studyMessages';
import { startStudyService } from '@/app/_studies/studyService';
import type { JobInput } from '@/shared/schemas/request';

/** A worker that keeps what it is sent and answers when told. */
class HeldWorker {
  static newest: HeldWorker;
  readonly sent: StudyRequest[] = [];
  onmessage: ((event: { data: StudyReply }) => void) | null = null;
  onerror: ((event: { message: string; preventDefault: () => void }) => void) | null = null;
  isEnded = false;
  constructor() {
    HeldWorker.newest = this;
  }
  postMessage(request: StudyRequest) {
    this.sent.push(request);
  }
  terminate() {
    this.isEnded = true;
  }
  answer(answer: unknown) {
    const number = this.sent.at(-1)?.number ?? 0;
    this.onmessage?.({ data: { kind: 'answered', number, answer } });
  }
}

const of = (name: string) => ({
  name: 'sheets' as const,
  input: { name } as unknown as JobInput,
  question: null,
});
const names = () => HeldWorker.newest.sent.map(({ input }) => (input as unknown as { name: string }).name);

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal('Worker', HeldWorker);
  vi.stubGlobal('window', new EventTarget());
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('the study worker', () => {
  it('is sent only the newest of questions asked in a row', () => {
    const service = startStudyService();
    service.ask('one', of('first'), vi.fn());
    vi.advanceTimersByTime(100);
    service.ask('one', of('second'), vi.fn());
    vi.runAllTimers();
    expect(names()).toEqual(['second']);
  });

  it('has one question under way; the others wait in the order they were asked', () => {
    const service = startStudyService();
    const heard: unknown[] = [];
    for (const asker of ['one', 'two', 'three'])
      service.ask(asker, of(asker), (reply) => heard.push(reply.kind === 'answered' && reply.answer));
    vi.runAllTimers();
    expect(names()).toEqual(['one']);
    HeldWorker.newest.answer('of one');
    HeldWorker.newest.answer('of two');
    HeldWorker.newest.answer('of three');
    expect(names()).toEqual(['one', 'two', 'three']);
    expect(heard).toEqual(['of one', 'of two', 'of three']);
  });

  it('drops the reply to a question that a newer one has replaced, and answers the newer', () => {
    const service = startStudyService();
    const [older, newer] = [vi.fn(), vi.fn()];
    service.ask('one', of('older'), older);
    vi.runAllTimers();
    service.ask('one', of('newer'), newer);
    vi.runAllTimers();
    HeldWorker.newest.answer(1);
    HeldWorker.newest.answer(2);
    expect(older).not.toHaveBeenCalled();
    expect(newer).toHaveBeenCalledWith(expect.objectContaining({ answer: 2 }));
  });

  it('forgets what an asker waits for when it leaves, and goes on with the others', () => {
    const service = startStudyService();
    const [gone, stays] = [vi.fn(), vi.fn()];
    service.ask('gone', of('gone'), gone);
    service.ask('stays', of('stays'), stays);
    vi.runAllTimers();
    service.leave('gone');
    HeldWorker.newest.answer(1);
    HeldWorker.newest.answer(2);
    expect(gone).not.toHaveBeenCalled();
    expect(stays).toHaveBeenCalledOnce();
  });

  it('tells a fault of the worker to who asked, and asks the next', () => {
    const service = startStudyService();
    const [first, second] = [vi.fn(), vi.fn()];
    service.ask('one', of('one'), first);
    service.ask('two', of('two'), second);
    vi.runAllTimers();
    HeldWorker.newest.onerror?.({ message: 'out of memory', preventDefault: vi.fn() });
    expect(first).toHaveBeenCalledWith(expect.objectContaining({ kind: 'failed', why: 'out of memory' }));
    expect(names()).toEqual(['one', 'two']);
  });

  it('is started anew once the network is back, where its code never came, and asked the same', () => {
    const service = startStudyService();
    const heard = vi.fn();
    service.ask('one', of('one'), heard);
    vi.runAllTimers();
    const silent = HeldWorker.newest;
    window.dispatchEvent(new Event('online'));
    expect(silent.isEnded).toBe(true);
    expect(names()).toEqual(['one']);
    HeldWorker.newest.answer('late');
    expect(heard).toHaveBeenCalledWith(expect.objectContaining({ answer: 'late' }));
  });

  it('that has answered is left alone when the network comes back', () => {
    const service = startStudyService();
    service.ask('one', of('one'), vi.fn());
    vi.runAllTimers();
    HeldWorker.newest.answer(1);
    const living = HeldWorker.newest;
    window.dispatchEvent(new Event('online'));
    expect(HeldWorker.newest).toBe(living);
    expect(living.isEnded).toBe(false);
  });

  it('is ended when it is stopped, with nothing sent later', () => {
    const service = startStudyService();
    service.ask('one', of('one'), vi.fn());
    service.stop();
    vi.runAllTimers();
    expect(HeldWorker.newest.isEnded).toBe(true);
    expect(names()).toEqual([]);
  });
});
