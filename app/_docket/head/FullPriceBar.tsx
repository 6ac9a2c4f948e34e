'use client';

import { useJobDesk } from '@/app/_docket/common/jobForm';
import { PriceRuler } from '@/app/_ruler/PriceRuler';
import { fromMinor, toMinor } from '@/shared/money';
import { PricePlate } from './PriceBar';
import type { PlateFigures } from './priceBarFigures';

type FullPlateProps = Readonly<{
  figures: PlateFigures;
  /** The line whose price the flag moves. */
  lineId: string;
  /** “a shirt”, or the name of the line where there are several. */
  whose: string;
  per: string;
  stale: boolean;
}>;

/** The plate with its figures; moving the flag writes the price of a line. */
export function FullPlate({ figures, lineId, whose, per, stale }: FullPlateProps) {
  const { jobId, input, maker } = useJobDesk();
  const { marginWords, pay, isDecided, terms } = figures;
  const { currency, policy } = input.workshop;
  const move = (withoutTax: number) => {
    const written = fromMinor(toMinor(terms.written(withoutTax), currency), currency);
    maker.setField(
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
    <PricePlate
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
    </PricePlate>
  );
}
