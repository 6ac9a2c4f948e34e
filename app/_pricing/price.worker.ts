import { priceJob } from '@/lib/costing/priceJob';
import { Grid } from '@/lib/grid/evaluateGrid';
import type { PriceQuestion, PriceReply } from './messages';

/* The sums run here, off the page's thread. Only the newest question matters; the page drops older replies. */
const grid = new Grid();

self.onmessage = ({ data }: MessageEvent<PriceQuestion>) => {
  self.postMessage(reply(data));
};

function reply({ number, input }: PriceQuestion): PriceReply {
  const start = performance.now();
  try {
    const answer = priceJob(input, grid);
    return { kind: 'priced', number, answer, tookMs: performance.now() - start };
  } catch (error) {
    return {
      kind: 'failed',
      number,
      why: error instanceof Error ? `${error.name}: ${error.message}` : String(error),
    };
  }
}
