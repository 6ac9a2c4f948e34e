'use client';

import { useJob } from '@/app/_docket/common/useJob';
import { PriceRuler } from '@/app/_ruler/PriceRuler';
import { fromMinor, toMinor } from '@/shared/money';
import { PriceBar } from './PriceBar';
import type { PriceBarFigures } from './priceBarFigures';

type FullPriceBarProps = Readonly<{
  figures: PriceBarFigures;
  /** The line whose price the flag moves. */
  lineId: string;
  /** “a shirt”, or the name of the line where there are several. */
  whose: string;
  per: string;
  stale: boolean;
}>;

/** The price bar with its figures; moving the flag writes the price of a line. */
export function FullPriceBar({ figures, lineId, whose, per, stale }: FullPriceBarProps) {
  const { jobId, input, workspace } = useJob();
  const { marginWords, pay, isDecided, terms } = figures;
  const { currency, policy } = input.workshop;
  const move = (withoutTax: number) => {
    const written = fromMinor(toMinor(terms.written(withoutTax), currency), currency);
    workspace.setField(
      { kind: 'job', id: jobId },
      `Price of ${whose}`,
      ['lines', input.job.lines.findIndex(({ id }) => id === lineId), 'askedPrice'],
      // Nothing at all is no price a document can hold.
      written > 0 ? written : policy.priceStep,
    );
  };
  const lastGood = stale ? 'last good price' : undefined;
  const meaning = `${marginWords}, pays you ${pay} an hour`;
  return (
    <PriceBar
      price={figures.price}
      per={isDecided ? per : `${per}, target`}
      underPrice={marginWords}
      pay={pay}
      payPer="an hour"
      underPay={figures.hours}
      stale={lastGood}
    >
      <PriceRuler
        label={`Price of ${whose}`}
        marks={figures.marks}
        flag={{ value: figures.flag, onMove: move }}
        bounds={figures.bounds}
        step={terms.withoutTax(policy.priceStep)}
        meaning={isDecided ? meaning : `${meaning}, target, no price decided yet`}
        format={figures.format}
        payToWorkBelow={figures.payToWorkBelow}
        stale={lastGood}
      />
    </PriceBar>
  );
}
