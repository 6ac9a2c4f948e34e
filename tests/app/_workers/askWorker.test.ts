// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { isGone } from '@/app/_network/isGone';
import { askWorker } from '@/app/_workers/askWorker';
import { HeldWorker } from './heldWorker';

vi.mock('@/app/_network/isGone', () => ({ isGone: vi.fn() }));

beforeEach(() => {
  vi.mocked(isGone).mockResolvedValue(false);
  vi.useFakeTimers();
  HeldWorker.all.length = 0;
});
afterEach(() => void vi.useRealTimers());

const start = () => new HeldWorker() as unknown as Worker;
const service = (pauseMs = 350) => askWorker<string, string>({ start, pauseMs });
const newest = () => HeldWorker.newest();
const answered = (answer: string, isLast = true) => ({ kind: 'answered', answer, isLast });

describe('a worker that is asked', () => {
  it('is sent only the newest of questions asked in a row', () => {
    const asked = service();
    asked.ask('one', 'first', vi.fn());
    vi.advanceTimersByTime(100);
    asked.ask('one', 'second', vi.fn());
    vi.runAllTimers();
    expect(newest().requests()).toEqual(['second']);
  });

  it('has one question under way; the others wait in the order they were asked', () => {
    const asked = service();
    const heard: unknown[] = [];
    for (const asker of ['one', 'two', 'three']) asked.ask(asker, asker, (news) => heard.push(news));
    vi.runAllTimers();
    expect(newest().requests()).toEqual(['one']);
    for (const answer of ['of one', 'of two', 'of three']) newest().answer(answer);
    expect(newest().requests()).toEqual(['one', 'two', 'three']);
    expect(heard).toEqual(['of one', 'of two', 'of three'].map((answer) => answered(answer)));
  });

  it('is asked at once where nothing is to be waited for', () => {
    service(0).ask('one', 'now', vi.fn());
    expect(newest().requests()).toEqual(['now']);
  });

  it('drops the reply to a question that a newer one has replaced, and answers the newer', () => {
    const asked = service();
    const [older, newer] = [vi.fn(), vi.fn()];
    asked.ask('one', 'older', older);
    vi.runAllTimers();
    asked.ask('one', 'newer', newer);
    vi.runAllTimers();
    newest().answer('1');
    newest().answer('2');
    expect(older).not.toHaveBeenCalled();
    expect(newer).toHaveBeenCalledWith(answered('2'));
  });

  it('forgets what an asker waits for when it leaves, and goes on with the others', () => {
    const asked = service();
    const [gone, stays] = [vi.fn(), vi.fn()];
    asked.ask('gone', 'gone', gone);
    asked.ask('stays', 'stays', stays);
    vi.runAllTimers();
    asked.leave('gone');
    newest().answer('1');
    newest().answer('2');
    expect(gone).not.toHaveBeenCalled();
    expect(stays).toHaveBeenCalledOnce();
  });

  it('tells a fault found at work to who asked, and asks the next', () => {
    const asked = service();
    const [first, second] = [vi.fn(), vi.fn()];
    asked.ask('one', 'one', first);
    asked.ask('two', 'two', second);
    vi.runAllTimers();
    newest().fail('RangeError: too deep');
    newest().answer('of two');
    expect(first).toHaveBeenCalledWith({
      kind: 'missing',
      failure: { kind: 'failed', why: 'RangeError: too deep', again: null },
    });
    expect(second).toHaveBeenCalledWith(answered('of two'));
  });

  it('is ended when it is stopped, with nothing sent later', () => {
    const asked = service(0);
    asked.ask('one', 'one', vi.fn());
    asked.ask('two', 'two', vi.fn());
    asked.stop();
    newest().answer('1');
    expect(newest().isEnded).toBe(true);
    expect(newest().requests()).toEqual(['one']);
  });
});

describe('a worker whose script does not come', () => {
  it('is told to everyone who waits, also to who asks only afterwards', () => {
    const asked = service(0);
    const [early, late] = [vi.fn(), vi.fn()];
    asked.ask('early', 'early', early);
    newest().breakDown('');
    asked.ask('late', 'late', late);
    const notStarted = { kind: 'missing', failure: expect.objectContaining({ kind: 'notStarted' }) };
    expect(early).toHaveBeenCalledWith(notStarted);
    expect(late).toHaveBeenCalledWith(notStarted);
  });

  it('is started anew after a while, and everything asked meanwhile is answered', () => {
    const asked = service(0);
    const heard: unknown[] = [];
    const hear = (answered: { kind: string }) => answered.kind === 'answered' && heard.push(answered);
    asked.ask('one', 'older', hear);
    newest().breakDown('');
    asked.ask('one', 'newer', hear);
    asked.ask('two', 'other', hear);
    expect(HeldWorker.all).toHaveLength(1);
    vi.advanceTimersByTime(1_000);
    expect(HeldWorker.all).toHaveLength(2);
    newest().answer('1');
    newest().answer('2');
    expect(newest().requests()).toEqual(['newer', 'other']);
    expect(heard).toEqual([answered('1'), answered('2')]);
  });

  it('is tried less and less often, though never less than once a minute', () => {
    service(0).ask('one', 'one', vi.fn());
    const startsWithin = (ms: number) => {
      const before = HeldWorker.all.length;
      for (let passed = 0; passed < ms; passed += 500) {
        vi.advanceTimersByTime(500);
        if (!newest().isEnded) newest().breakDown('');
      }
      return HeldWorker.all.length - before;
    };
    newest().breakDown('');
    expect(startsWithin(60_000)).toBeLessThanOrEqual(6);
    startsWithin(10 * 60_000);
    expect(startsWithin(10 * 60_000)).toBe(10);
  });

  it('is tried at once when the network comes back', () => {
    const asked = service(0);
    const listener = vi.fn();
    asked.ask('one', 'one', listener);
    newest().breakDown('');
    window.dispatchEvent(new Event('online'));
    newest().answer('here');
    expect(listener).toHaveBeenLastCalledWith(answered('here'));
  });

  it('is tried at once when it is asked for', () => {
    const asked = service(0);
    const listener = vi.fn();
    asked.ask('one', 'one', listener);
    newest().breakDown('');
    listener.mock.lastCall?.[0].failure.again();
    newest().answer('here');
    expect(HeldWorker.all).toHaveLength(2);
    expect(listener).toHaveBeenLastCalledWith(answered('here'));
  });

  it('is not tried any more once nobody holds it', () => {
    const asked = service(0);
    asked.ask('one', 'one', vi.fn());
    newest().breakDown('');
    asked.stop();
    vi.advanceTimersByTime(10 * 60_000);
    window.dispatchEvent(new Event('online'));
    expect(HeldWorker.all).toHaveLength(1);
  });
});

describe('a worker that looks for a better answer once it has given one', () => {
  function followed() {
    const asked = service(0);
    const listener = vi.fn();
    asked.ask('one', 'one', listener);
    newest().answer('first', false);
    return { asked, listener };
  }

  it('has each better answer told to who asked, the last one as the last', () => {
    const { listener } = followed();
    newest().answer('better', false);
    newest().answer('best', true);
    newest().answer('too late', true);
    expect(listener.mock.calls).toEqual([
      [answered('first', false)],
      [answered('better', false)],
      [answered('best')],
    ]);
  });

  it('has it told where it ends without one: the answer that was given stands', () => {
    const { listener } = followed();
    newest().endLooking();
    expect(listener.mock.calls).toEqual([[answered('first', false)], [answered('first')]]);
  });

  it('is sent a newer question at once, and nothing of the older is told any more', () => {
    const { asked, listener } = followed();
    const newer = vi.fn();
    const [older] = newest().sent;
    asked.ask('one', 'two', newer);
    expect(newest().requests()).toEqual(['one', 'two']);
    newest().onmessage?.({
      data: { kind: 'answered', number: older?.number, answer: 'better', isLast: false },
    });
    expect(listener).toHaveBeenCalledTimes(1);
    newest().answer('of two');
    expect(newer.mock.calls).toEqual([[answered('of two')]]);
  });

  it('leaves off for the question of another, and the first is told that its answer stands', () => {
    const { asked, listener } = followed();
    asked.ask('other', 'two', vi.fn());
    expect(listener).toHaveBeenLastCalledWith(answered('first'));
  });

  it('has nothing told to who has left', () => {
    const { asked, listener } = followed();
    asked.leave('one');
    newest().answer('better', false);
    expect(listener).toHaveBeenCalledTimes(1);
  });

  it('has a failure of the search told, and a breakdown, after which it may be asked again', () => {
    const { listener } = followed();
    newest().fail('RangeError');
    expect(listener).toHaveBeenLastCalledWith({
      kind: 'missing',
      failure: { kind: 'failed', why: 'RangeError', again: null },
    });
    const other = followed();
    newest().breakDown('out of memory');
    expect(other.listener).toHaveBeenLastCalledWith({
      kind: 'missing',
      failure: expect.objectContaining({ kind: 'broke', why: 'out of memory' }),
    });
    other.listener.mock.lastCall?.[0].failure.again();
    newest().answer('again');
    expect(other.listener).toHaveBeenLastCalledWith(answered('again'));
  });
});

describe('a worker whose script is gone from the server', () => {
  it('is told so to everyone who waits, and after later tries too, without hope in between', async () => {
    vi.mocked(isGone).mockResolvedValue(true);
    const asked = service(0);
    const kinds: string[] = [];
    asked.ask('one', 'one', (answered) =>
      kinds.push(answered.kind === 'missing' ? answered.failure.kind : answered.kind),
    );
    newest().breakDown('');
    await vi.advanceTimersByTimeAsync(1_000);
    expect(HeldWorker.all).toHaveLength(2);
    newest().breakDown('');
    expect(kinds).toEqual(['notStarted', 'gone', 'gone']);
  });

  it('answers all the same where the server has it again', async () => {
    vi.mocked(isGone).mockResolvedValue(true);
    const listener = vi.fn();
    service(0).ask('one', 'one', listener);
    newest().breakDown('');
    await vi.advanceTimersByTimeAsync(1_000);
    newest().answer('here');
    expect(listener).toHaveBeenLastCalledWith(answered('here'));
  });

  it('is not told to who has left meanwhile', async () => {
    vi.mocked(isGone).mockResolvedValue(true);
    const asked = service(0);
    const listener = vi.fn();
    asked.ask('one', 'one', listener);
    newest().breakDown('');
    asked.leave('one');
    await vi.advanceTimersByTimeAsync(0);
    expect(listener).toHaveBeenCalledTimes(1);
  });
});

describe('a worker that breaks down at work', () => {
  it('is told to who asked, who may ask again; the next question goes to a new one', () => {
    const asked = service(0);
    const [first, second] = [vi.fn(), vi.fn()];
    asked.ask('one', 'one', first);
    asked.ask('two', 'two', second);
    newest().ready();
    newest().breakDown('out of memory');
    expect(first).toHaveBeenLastCalledWith({
      kind: 'missing',
      failure: expect.objectContaining({ kind: 'broke', why: 'out of memory' }),
    });
    expect(newest().requests()).toEqual(['two']);
    newest().answer('of two');
    expect(second).toHaveBeenLastCalledWith(answered('of two'));
    first.mock.lastCall?.[0].failure.again();
    newest().answer('of one');
    expect(first).toHaveBeenLastCalledWith(answered('of one'));
  });

  it('is replaced where it broke down between two questions', () => {
    const asked = service(0);
    const listener = vi.fn();
    asked.ask('one', 'one', listener);
    newest().answer('1');
    newest().breakDown('gone');
    asked.ask('one', 'two', listener);
    newest().answer('2');
    expect(HeldWorker.all).toHaveLength(2);
    expect(listener).toHaveBeenLastCalledWith(answered('2'));
  });

  it('is taken for broken where its reply cannot be delivered', () => {
    const listener = vi.fn();
    service(0).ask('one', 'one', listener);
    newest().ready();
    newest().onmessageerror?.();
    expect(listener).toHaveBeenLastCalledWith({
      kind: 'missing',
      failure: expect.objectContaining({ kind: 'broke' }),
    });
  });

  it('is not to blame for a question that cannot be delivered: the next is asked', () => {
    const asked = service(0);
    const [first, second] = [vi.fn(), vi.fn()];
    asked.ask('one', HeldWorker.UNDELIVERABLE, first);
    asked.ask('two', 'two', second);
    newest().answer('of two');
    expect(first).toHaveBeenLastCalledWith({
      kind: 'missing',
      failure: expect.objectContaining({ kind: 'failed' }),
    });
    expect(second).toHaveBeenLastCalledWith(answered('of two'));
  });
});
