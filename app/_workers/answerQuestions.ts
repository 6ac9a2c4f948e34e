import type { WorkerQuestion, WorkerReady, WorkerReply } from './workerMessages';

/** Makes the worker this runs in answer questions, one after the other. */
export function answerQuestions<Request, Answer>(
  answer: (request: Request) => Answer | Promise<Answer>,
): void {
  self.onmessage = ({ data }: MessageEvent<WorkerQuestion<Request>>) => {
    void reply(data).then((told) => self.postMessage(told));
  };
  const ready: WorkerReady = { kind: 'ready' };
  self.postMessage(ready);

  async function reply({ number, request }: WorkerQuestion<Request>): Promise<WorkerReply<Answer>> {
    try {
      return { kind: 'answered', number, answer: await answer(request) };
    } catch (error) {
      const why = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
      return { kind: 'failed', number, why };
    }
  }
}
