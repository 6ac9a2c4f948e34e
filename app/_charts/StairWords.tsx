import { PlotWords } from './PlotWords';
import { placeLabels } from './placeLabels';
import type { StairsToDraw } from './stairsToDraw';
import { usePlot } from './usePlot';

/** Half of the flag of this job with its rim, px. */
const FLAG = 9;

/** What this job pays, what is lost where the list falls, and the totals held level: as many as there is room for. */
export function StairWords({ stairs, letterPx }: Readonly<{ stairs: StairsToDraw; letterPx: number }>) {
  const plot = usePlot();
  if (plot === null) return null;
  const { left, right, top, bottom, xOf, yOf } = plot;
  const { points, held, falls, job } = stairs;
  const sizePx = letterPx * 0.8125;
  const paidAt = (order: number) => points.find(({ n }) => n === order)?.pays ?? 0;
  const flag = job === null ? null : { x: xOf(job.n), y: yOf(job.total) };
  const placed = placeLabels(
    [
      ...(job === null || flag === null ? [] : [{ key: 'job', words: job.words, ...flag, away: 11 }]),
      ...falls.map(({ from, cheaperAt, words }) => ({
        key: `fall ${from}`,
        words,
        x: xOf(cheaperAt),
        y: yOf(paidAt(cheaperAt)) + letterPx,
        away: 5,
      })),
      ...[...held].reverse().map(({ from, to, pays, words }) => ({
        key: `held ${from}`,
        words,
        x: (xOf(from) + xOf(to + 1)) / 2,
        y: yOf(pays),
        away: 6,
      })),
    ],
    { left, right, top: top - letterPx, bottom },
    {
      // Nothing is written over the flag of this job.
      boxes:
        flag === null
          ? []
          : [{ left: flag.x - FLAG, right: flag.x + FLAG, top: flag.y - FLAG, bottom: flag.y + FLAG }],
      lines: [],
    },
    sizePx,
    falls.length > 0,
  );
  return (
    <PlotWords
      placed={placed}
      lookOf={(key) => (key === 'job' ? 'bold' : key.startsWith('fall') ? 'lost' : 'quiet')}
      sizePx={sizePx}
    />
  );
}
