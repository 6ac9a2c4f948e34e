import { Grid } from '@/lib/grid/evaluateGrid';
import type { JobInput } from '@/shared/schemas/request';
import { studies } from './studies';
import type { StudyReply, StudyRequest } from './studyMessages';

/* Studies run here, beside the prices and with a grid of their own, so that prices never wait for them. */
const grid = new Grid();

self.onmessage = ({ data }: MessageEvent<StudyRequest>) => {
  self.postMessage(reply(data));
};

function reply({ number, name, input, question }: StudyRequest): StudyReply {
  try {
    const study = studies[name] as (input: JobInput, grid: Grid, question: unknown) => unknown;
    return { kind: 'answered', number, answer: study(input, grid, question) };
  } catch (error) {
    const why = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    return { kind: 'failed', number, why };
  }
}
