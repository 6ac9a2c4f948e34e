import type { WorkerFailure } from '@/app/_network/workerFailure';
import { ownWorker, type WorkerLoss } from './ownWorker';
import type { WorkerQuestion, WorkerReply } from './workerMessages';

/** Of a worker that did its work and found nothing to say. */
export const NO_ANSWER: WorkerFailure = { kind: 'failed', why: 'it gave no answer', again: null };

type Answered<Answer> =
  | {
      readonly kind: 'answered';
      readonly answer: Answer;
      /** False while the worker looks for a better one; its listener is then told again. */
      readonly isLast: boolean;
    }
  | { readonly kind: 'missing'; readonly failure: WorkerFailure };

type AnswerListener<Answer> = (answered: Answered<Answer>) => void;

export interface AskedWorker<Request, Answer> {
  /**
   * A newer question of the same asker makes its older one unwanted: it is not sent, or its reply is dropped. What is
   * missing may still come: a question stays until it is answered, a newer one comes, or its asker leaves.
   */
  readonly ask: (asker: string, request: Request, listener: AnswerListener<Answer>) => void;
  /** Forgets what an asker still waits for. */
  readonly leave: (asker: string) => void;
  readonly stop: () => void;
}

interface AskWorkerOptions {
  readonly start: () => Worker;
  /** A person who types is not asked for between the keys; 0 sends at once. */
  readonly pauseMs: number;
}

/** A question that has no answer yet. */
interface OpenQuestion<Request, Answer> {
  readonly request: Request;
  readonly listener: AnswerListener<Answer>;
  state: 'paused' | 'waiting' | 'asked' | 'broke';
}

/** A question whose answer may be followed by a better one. */
interface FollowedQuestion<Request, Answer> {
  readonly number: number;
  readonly asker: string;
  readonly question: OpenQuestion<Request, Answer>;
  readonly answer: Answer;
}

/** Asks a worker one question at a time; the others wait in the order they were asked. */
export function askWorker<Request, Answer>({
  start,
  pauseMs,
}: AskWorkerOptions): AskedWorker<Request, Answer> {
  type Open = OpenQuestion<Request, Answer>;
  const open = new Map<string, Open>();
  /** What the worker is at; nobody may want it any more. */
  let underWay: { readonly number: number; readonly asker: string; readonly question: Open } | null = null;
  let followed: FollowedQuestion<Request, Answer> | null = null;
  let last = 0;

  const worker = ownWorker<WorkerQuestion<Request>, WorkerReply<Answer>>({
    start,
    onReply: (reply) => {
      if (reply.number === followed?.number) return follow(followed, reply);
      if (reply.number !== underWay?.number || reply.kind === 'ended') return;
      settle(
        reply.kind === 'answered'
          ? { kind: 'answered', answer: reply.answer, isLast: reply.isLast }
          : missing({ kind: 'failed', why: reply.why, again: null }),
      );
    },
    onLost: (loss) => {
      const asked = underWay;
      const left = followed;
      underWay = null;
      followed = null;
      if (loss.kind !== 'broke') {
        if (asked !== null) asked.question.state = 'waiting';
        for (const question of open.values()) if (question.state === 'waiting') tellLoss(question, loss);
        return;
      }
      if (asked !== null && isOpen(asked)) {
        // Asked again by itself, it would break the next worker as well.
        asked.question.state = 'broke';
        asked.question.listener(missing({ ...loss, again: () => askAgain(asked) }));
      }
      if (left !== null) {
        const { asker, question } = left;
        question.listener(missing({ ...loss, again: () => ask(asker, question.request, question.listener) }));
      }
      sendNext();
    },
    onTryAgain: () => sendNext(),
  });

  function sendNext(): void {
    if (underWay !== null || worker.loss() !== null) return;
    const next = [...open].find(([, { state }]) => state === 'waiting');
    if (next === undefined) return;
    const [asker, question] = next;
    question.state = 'asked';
    last += 1;
    underWay = { number: last, asker, question };
    // The worker leaves off looking for whoever asked before.
    if (followed !== null) follow(followed, { kind: 'ended', number: followed.number });
    try {
      worker.post({ number: last, request: question.request });
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      settle(missing({ kind: 'failed', why, again: null }));
    }
  }

  function settle(answered: Answered<Answer>): void {
    const asked = underWay;
    underWay = null;
    if (asked !== null && isOpen(asked)) {
      open.delete(asked.asker);
      if (answered.kind === 'answered' && !answered.isLast) followed = { ...asked, answer: answered.answer };
      asked.question.listener(answered);
    }
    sendNext();
  }

  /** What is told of a question that has an answer already. */
  function follow(before: FollowedQuestion<Request, Answer>, reply: WorkerReply<Answer>): void {
    const { listener } = before.question;
    followed = null;
    if (reply.kind === 'failed') {
      listener(missing({ kind: 'failed', why: reply.why, again: null }));
      return;
    }
    const isLast = reply.kind === 'ended' || reply.isLast;
    const answer = reply.kind === 'ended' ? before.answer : reply.answer;
    if (!isLast) followed = { ...before, answer };
    listener({ kind: 'answered', answer, isLast });
  }

  function askAgain(asked: { readonly asker: string; readonly question: Open }): void {
    if (!isOpen(asked) || asked.question.state !== 'broke') return;
    asked.question.state = 'waiting';
    sendNext();
  }

  const isOpen = ({ asker, question }: { readonly asker: string; readonly question: Open }): boolean =>
    open.get(asker) === question;

  const tellLoss = ({ listener }: Open, loss: WorkerLoss): void =>
    listener(missing({ ...loss, again: worker.tryNow }));

  function ask(asker: string, request: Request, listener: AnswerListener<Answer>): void {
    // Behind the others, where an older one may have stood before them.
    leave(asker);
    const question: Open = { request, listener, state: 'paused' };
    open.set(asker, question);
    const send = () => {
      if (!isOpen({ asker, question })) return;
      question.state = 'waiting';
      const loss = worker.loss();
      if (loss !== null) tellLoss(question, loss);
      sendNext();
    };
    if (pauseMs === 0) send();
    else setTimeout(send, pauseMs);
  }

  function leave(asker: string): void {
    open.delete(asker);
    if (followed?.asker === asker) followed = null;
  }

  return {
    ask,
    leave,
    stop() {
      open.clear();
      underWay = null;
      followed = null;
      worker.end();
    },
  };
}

// Helpers

const missing = (failure: WorkerFailure) => ({ kind: 'missing', failure }) as const;
