import type { CurveRow } from '@/lib/studies/curve/curveSeries';
import { type MarkedBatch, markReach } from './BatchMark';
import { PlotWords } from './PlotWords';
import { crosses, type PlacedLabel, placeLabels } from './placeLabels';
import { usePlot } from './usePlot';

type BatchWordsProps = Readonly<{
  rows: readonly CurveRow[];
  /** The one on top of all last; none beyond the drawing. */
  marks: readonly MarkedBatch[];
  /** The first batch that just uses up its sheets. */
  firstFull: number | null;
  /** What lies below nothing; null where nothing does. */
  lossWords: string | null;
  letterPx: number;
  falls: boolean;
}>;

/** Mean advance of a letter. */
const ADVANCE = 0.54;

/** What the marks mean, beside them, clear of the curve and of what is written there already. */
export function BatchWords({ rows, marks, firstFull, lossWords, letterPx, falls }: BatchWordsProps) {
  const plot = usePlot();
  if (plot === null) return null;
  const { left, right, top, bottom, xOf, yOf } = plot;
  const sizePx = letterPx * 0.875;
  const zero = yOf(0);
  const looked = marks.find(({ kind }) => kind === 'looked');
  const lines = [
    rows.map(({ n, value }) => [xOf(n), yOf(value)] as const),
    rows.flatMap(({ n, price }) => (price === null ? [] : [[xOf(n), yOf(price)] as const])),
    looked === undefined ? [] : [yOf(looked.value), bottom].map((y) => [xOf(looked.n), y] as const),
  ];
  const lossWidth = (lossWords?.length ?? 0) * sizePx * ADVANCE;
  const lossAt = (from: number) => ({
    left: from,
    right: from + lossWidth,
    top: zero,
    bottom: zero + letterPx * 1.5,
  });
  // At the left, where the loss begins; at the other end where the curve runs through there.
  const [atLeft, atRight] = [lossAt(left + 10), lossAt(right - 10 - lossWidth)];
  const lossBox = lines.some((line) => crosses(line, atLeft)) ? atRight : atLeft;
  const loss: readonly PlacedLabel[] =
    lossWords === null
      ? []
      : [{ key: 'loss', words: lossWords, x: lossBox.left, y: zero + letterPx * 1.15, anchor: 'start' }];
  const sheets: readonly PlacedLabel[] =
    firstFull === null
      ? []
      : [{ key: 'sheets', words: 'full sheets', x: xOf(firstFull) - 5, y: bottom - 4, anchor: 'end' }];
  const placed = placeLabels(
    [...marks].reverse().map(({ kind, n, value, words }) => ({
      key: kind,
      words,
      x: xOf(n),
      y: yOf(value),
      away: markReach[kind],
      isOver: kind === 'looked',
    })),
    { left, right, top: top - letterPx, bottom: bottom - 12 },
    { boxes: lossWords === null ? [] : [lossBox], lines },
    sizePx,
    falls,
  );
  return (
    <PlotWords
      placed={[...sheets, ...loss, ...placed]}
      lookOf={(key) => (key === 'sheets' ? 'sheets' : key === 'asked' ? 'quiet' : 'bold')}
      sizePx={sizePx}
    />
  );
}
