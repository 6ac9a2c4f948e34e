import type { WorkerQuestion } from '@/app/_workers/workerMessages';

/** A worker that keeps what it is sent, and answers or breaks down when told. */
export class HeldWorker {
  static readonly UNDELIVERABLE = 'undeliverable';
  static readonly all: HeldWorker[] = [];
  static newest(): HeldWorker {
    const newest = HeldWorker.all.at(-1);
    if (newest === undefined) throw new Error('No worker was started.');
    return newest;
  }

  readonly sent: WorkerQuestion<string>[] = [];
  onmessage: ((event: { data: unknown }) => void) | null = null;
  onerror: ((event: { message: string; preventDefault: () => void }) => void) | null = null;
  onmessageerror: (() => void) | null = null;
  isEnded = false;

  constructor() {
    HeldWorker.all.push(this);
  }
  postMessage(question: WorkerQuestion<string>) {
    if (question.request === HeldWorker.UNDELIVERABLE) throw new DOMException('no clone', 'DataCloneError');
    this.sent.push(question);
  }
  terminate() {
    this.isEnded = true;
  }

  requests = () => this.sent.map(({ request }) => request);
  ready = () => this.onmessage?.({ data: { kind: 'ready' } });
  answer(answer: string, isLast = true) {
    this.ready();
    this.onmessage?.({ data: { kind: 'answered', number: this.sent.at(-1)?.number, answer, isLast } });
  }
  endLooking() {
    this.onmessage?.({ data: { kind: 'ended', number: this.sent.at(-1)?.number } });
  }
  fail(why: string) {
    this.ready();
    this.onmessage?.({ data: { kind: 'failed', number: this.sent.at(-1)?.number, why } });
  }
  breakDown = (message: string) => this.onerror?.({ message, preventDefault: () => undefined });
}
