'use client';

import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import type { BreakListFormat } from '@/app/_words/docket/breakListWords';
import { pieceWords } from '@/app/_words/docket/pieceWords';
import { formatterFor } from '@/app/_words/formatter';
import type { BreaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import type { Line } from '@/shared/schemas/job';
import { BreaksTest } from './BreaksTest';
import { PriceOrders } from './PriceOrders';
import { PriceSizes } from './PriceSizes';
import { PriceTariff } from './PriceTariff';

type BreaksOfLineProps = Readonly<{
  line: Line;
  index: number;
  answer: BreaksAnswer;
  stale: boolean;
  pieces: number | null;
  onPieces: (pieces: number | null) => void;
}>;

/** Everything that is to be said of the breaks of one line, beneath its table. */
export function BreaksOfLine(props: BreaksOfLineProps) {
  const { line, index, answer, stale, pieces, onPieces } = props;
  const { input } = useJob();
  const context = useTextContext();
  const { policy } = input.workshop;
  const piece = pieceWords(input.blanks[line.blankId]).one;
  const format: BreakListFormat = {
    formatter: formatterFor(context),
    currency: answer.currency,
    locale: context.locale,
    sizes: [...new Set(answer.ends.map(({ size }) => size))],
  };
  return (
    <>
      <PriceSizes {...{ line, index, answer }} step={policy.upChargeStep ?? policy.priceStep} />
      <PriceTariff {...{ answer, piece, format }} priceStep={policy.priceStep} />
      <BreaksTest {...{ answer, piece, format, stale }} lineId={line.id} />
      <PriceOrders {...{ answer, format, pieces, onPieces }} />
    </>
  );
}
