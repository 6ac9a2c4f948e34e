import type { StudyReply, StudyRequest } from './studyMessages';

export type StudyListener = (reply: StudyReply) => void;

export interface StudyService {
  /** A newer question of the same asker makes its older one unwanted: it is not sent, or its reply is dropped. */
  readonly ask: (asker: string, request: Omit<StudyRequest, 'number'>, listener: StudyListener) => void;
  /** Forgets what an asker still waits for. */
  readonly leave: (asker: string) => void;
  readonly stop: () => void;
}

/** A maker who types is not asked for between the keys. */
const PAUSE_MS = 350;

/** Starts the study worker. One question is under way at a time; the others wait in the order they were asked. */
export function startStudyService(): StudyService {
  let worker = new Worker(new URL('./study.worker.ts', import.meta.url), { type: 'module' });
  let hasAnswered = false;
  const waiting = new Map<string, { readonly request: StudyRequest; readonly listener: StudyListener }>();
  const pauses = new Map<string, ReturnType<typeof setTimeout>>();
  let underWay: {
    readonly asker: string;
    readonly request: StudyRequest;
    readonly listener: StudyListener;
  } | null = null;
  let last = 0;

  const sendNext = () => {
    const [next] = waiting;
    if (underWay !== null || next === undefined) return;
    const [asker, { request, listener }] = next;
    waiting.delete(asker);
    underWay = { asker, request, listener };
    worker.postMessage(request);
  };
  const settle = (reply: StudyReply) => {
    const asked = underWay;
    underWay = null;
    if (asked?.request.number === reply.number) asked.listener(reply);
    sendNext();
  };
  const leave = (asker: string) => {
    clearTimeout(pauses.get(asker));
    waiting.delete(asker);
    if (underWay?.asker === asker) underWay = { ...underWay, listener: () => undefined };
  };
  const listen = () => {
    worker.onmessage = ({ data }: MessageEvent<StudyReply>) => {
      hasAnswered = true;
      settle(data);
    };
    worker.onerror = (event) => {
      event.preventDefault();
      const why = event.message || 'the worker could not be started';
      settle({ kind: 'failed', number: underWay?.request.number ?? last, why });
    };
  };
  /** A worker whose code was not fetched for want of a network stays silent, and no error tells of it. */
  const startAnew = () => {
    if (hasAnswered) return;
    worker.terminate();
    worker = new Worker(new URL('./study.worker.ts', import.meta.url), { type: 'module' });
    listen();
    if (underWay !== null) worker.postMessage(underWay.request);
  };
  listen();
  window.addEventListener('online', startAnew);

  return {
    ask(asker, request, listener) {
      leave(asker);
      last += 1;
      const numbered = { ...request, number: last };
      const send = () => {
        waiting.set(asker, { request: numbered, listener });
        sendNext();
      };
      pauses.set(asker, setTimeout(send, PAUSE_MS));
    },
    leave,
    stop() {
      window.removeEventListener('online', startAnew);
      for (const pause of pauses.values()) clearTimeout(pause);
      worker.terminate();
    },
  };
}
