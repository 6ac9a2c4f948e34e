import type { WorkerQuestion, WorkerReady, WorkerReply } from './workerMessages';

/** What comes of a question: an answer at once, and perhaps a search for a better one. */
export interface Response<Answer> {
  readonly answer: Answer;
  /** Does some 10 ms of work at a time; yields a better answer or null. Null where nothing better is looked for. */
  readonly further: Generator<Answer | null, void> | null;
}

/**
 * Makes the worker this runs in answer questions, one after the other. Between two questions it looks for better
 * answers to the newest; the next question comes first and ends that.
 */
export function answerQuestions<Request, Answer>(
  respond: (request: Request) => Response<Answer> | Promise<Response<Answer>>,
): void {
  type Reply = WorkerReply<Answer>;
  let looking: { readonly number: number; readonly further: Generator<Answer | null, void> } | null = null;
  let newest = 0;
  // A message to itself lets those of the page in between.
  const turns = new MessageChannel();
  let isTurnWished = false;
  turns.port1.onmessage = () => {
    isTurnWished = false;
    post(lookOn());
  };

  self.onmessage = ({ data }: MessageEvent<WorkerQuestion<Request>>) => {
    looking = null;
    newest = data.number;
    void reply(data).then((told) => {
      post(told);
      nextTurn();
    });
  };
  const ready: WorkerReady = { kind: 'ready' };
  self.postMessage(ready);

  async function reply({ number, request }: WorkerQuestion<Request>): Promise<Reply> {
    try {
      const { answer, further } = await respond(request);
      if (further !== null && number === newest) looking = { number, further };
      return { kind: 'answered', number, answer, isLast: further === null };
    } catch (error) {
      return failed(number, error);
    }
  }

  function lookOn(): Reply | null {
    if (looking === null) return null;
    const { number, further } = looking;
    try {
      const { done, value } = further.next();
      if (done !== true) {
        nextTurn();
        return value === null ? null : { kind: 'answered', number, answer: value, isLast: false };
      }
      looking = null;
      return { kind: 'ended', number };
    } catch (error) {
      looking = null;
      return failed(number, error);
    }
  }

  /** One turn at a time, whatever was asked since the last was wished for. */
  function nextTurn(): void {
    if (looking === null || isTurnWished) return;
    isTurnWished = true;
    turns.port2.postMessage(null);
  }

  function post(message: Reply | null): void {
    if (message !== null) self.postMessage(message);
  }
}

// Helpers

function failed(number: number, error: unknown): { readonly kind: 'failed'; number: number; why: string } {
  const why = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  return { kind: 'failed', number, why };
}
