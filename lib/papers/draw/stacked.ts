import type { SetLine } from '@/lib/lettering/openLettering';
import { highOf } from './setting';

/** Lines one below the other as a single one, which no page breaks. */
export const stacked = (lines: readonly SetLine[]): SetLine => ({
  high: highOf(lines),
  draw(page, { x, top }) {
    let low = top;
    for (const line of lines) {
      line.draw(page, { x, top: low });
      low -= line.high;
    }
  },
});
