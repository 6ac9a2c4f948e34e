import { Grid } from '@/lib/grid/evaluateGrid';
import { sheetsAnswer } from '@/lib/sheets/sheetsAnswer';
import type { SheetsQuestion, SheetsReply } from './sheetsMessages';

/* Layouts and the jobs costed on other sheets run here, beside the prices. */
const grid = new Grid();

self.onmessage = ({ data }: MessageEvent<SheetsQuestion>) => {
  self.postMessage(reply(data));
};

function reply({ number, input }: SheetsQuestion): SheetsReply {
  try {
    return { kind: 'answered', number, answer: sheetsAnswer(input, grid) };
  } catch (error) {
    const why = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    return { kind: 'failed', number, why };
  }
}
