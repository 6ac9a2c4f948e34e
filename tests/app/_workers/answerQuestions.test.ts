import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { answerQuestions, type Response } from '@/app/_workers/answerQuestions';

/** Stands in for the inside of a worker: what it posts, and turns that are taken when the test says so. */
let posted: unknown[] = [];
let turns: (() => void)[] = [];
const inside: {
  onmessage: ((event: { readonly data: unknown }) => void) | null;
  readonly postMessage: (message: unknown) => void;
} = { onmessage: null, postMessage: (message) => posted.push(message) };

class HeldChannel {
  readonly port1: { onmessage: (() => void) | null } = { onmessage: null };
  readonly port2 = { postMessage: () => turns.push(() => this.port1.onmessage?.()) };
}

beforeEach(() => {
  posted = [];
  turns = [];
  inside.onmessage = null;
  vi.stubGlobal('self', inside);
  vi.stubGlobal('MessageChannel', HeldChannel);
});
afterEach(() => void vi.unstubAllGlobals());

const ask = (number: number, request: string) => inside.onmessage?.({ data: { number, request } });
/** Answers may be promised: they are posted once those are kept, before anything else that waits. */
const answers = () => new Promise<void>((resolve) => setImmediate(resolve));
const takeTurn = () => turns.shift()?.();
const answered = (number: number, answer: string, isLast: boolean) => ({
  kind: 'answered',
  number,
  answer,
  isLast,
});

/** Answers at once, then finds something better in the second slice. */
function respond(request: string): Response<string> {
  function* further(): Generator<string | null, void> {
    yield null;
    yield `better ${request}`;
  }
  return { answer: request, further: further() };
}

describe('the inside of a worker', () => {
  it('says that it runs, and answers with the last word where nothing better is looked for', async () => {
    answerQuestions((request: string) => ({ answer: request, further: null }));
    ask(1, 'a');
    await answers();
    expect(posted).toEqual([{ kind: 'ready' }, answered(1, 'a', true)]);
    expect(turns).toHaveLength(0);
  });

  it('looks on a slice a turn, gives what is better when it is found, and says when it ends', async () => {
    answerQuestions(respond);
    ask(1, 'a');
    await answers();
    expect(posted).toEqual([{ kind: 'ready' }, answered(1, 'a', false)]);
    takeTurn();
    expect(posted).toHaveLength(2);
    takeTurn();
    expect(posted.at(-1)).toEqual(answered(1, 'better a', false));
    takeTurn();
    expect(posted.at(-1)).toEqual({ kind: 'ended', number: 1 });
    expect(turns).toHaveLength(0);
  });

  it('answers a newer question before it looks on, and then looks for that one alone', async () => {
    answerQuestions(respond);
    ask(1, 'a');
    ask(2, 'b');
    await answers();
    while (turns.length > 0) takeTurn();
    expect(posted).toEqual([
      { kind: 'ready' },
      answered(1, 'a', false),
      answered(2, 'b', false),
      answered(2, 'better b', false),
      { kind: 'ended', number: 2 },
    ]);
  });

  it('looks on for the newest alone where an older answer was promised and comes later', async () => {
    let keep = (_: Response<string>) => {};
    const promised = new Promise<Response<string>>((resolve) => {
      keep = resolve;
    });
    answerQuestions((request: string) => (request === 'a' ? promised : respond(request)));
    ask(1, 'a');
    ask(2, 'b');
    await answers();
    keep(respond('a'));
    await answers();
    while (turns.length > 0) takeTurn();
    expect(posted.slice(1)).toEqual([
      answered(2, 'b', false),
      answered(1, 'a', false),
      answered(2, 'better b', false),
      { kind: 'ended', number: 2 },
    ]);
  });

  it('tells a fault of an answer and of the search for a better one', async () => {
    answerQuestions((request: string): Response<string> => {
      if (request === 'bad') throw new RangeError('no sum');
      function* further(): Generator<string | null, void> {
        yield null;
        throw new RangeError('no layout');
      }
      return { answer: request, further: further() };
    });
    ask(1, 'bad');
    ask(2, 'good');
    await answers();
    while (turns.length > 0) takeTurn();
    expect(posted.slice(1)).toEqual([
      { kind: 'failed', number: 1, why: 'RangeError: no sum' },
      answered(2, 'good', false),
      { kind: 'failed', number: 2, why: 'RangeError: no layout' },
    ]);
  });
});
