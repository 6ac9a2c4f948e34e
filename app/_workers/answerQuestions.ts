import type { WorkerQuestion, WorkerReady, WorkerReply } from './workerMessages';

/** Makes the worker this runs in answer questions, one after the other. */
export function answerQuestions<Request, Answer>(answer: (request: Request) => Answer): void {
  self.onmessage = ({ data }: MessageEvent<WorkerQuestion<Request>>) => {
    self.postMessage(reply(data));
  };
  const ready: WorkerReady = { kind: 'ready' };
  self.postMessage(ready);

  function reply({ number, request }: WorkerQuestion<Request>): WorkerReply<Answer> {
    try {
      return { kind: 'answered', number, answer: answer(request) };
    } catch (error) {
      const why = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
      return { kind: 'failed', number, why };
    }
  }
}
