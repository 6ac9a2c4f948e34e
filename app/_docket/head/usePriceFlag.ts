'use client';

import type { ComponentProps } from 'react';
import { useJob } from '@/app/_docket/common/useJob';
import type { PriceRuler } from '@/app/_ruler/PriceRuler';
import { fromMinor, toMinor } from '@/shared/money';
import type { PriceBarFigures } from './priceBarFigures';

/** @returns what a ruler needs to show the price of a line and to write it where the flag is moved to. */
export function usePriceFlag(
  figures: PriceBarFigures,
  lineId: string,
  whose: string,
): ComponentProps<typeof PriceRuler> {
  const { jobId, input, workspace } = useJob();
  const { currency, policy } = input.workshop;
  const onMove = (value: number) => {
    const written = fromMinor(toMinor(value - figures.startShare, currency), currency);
    workspace.setField(
      { kind: 'job', id: jobId },
      `Price of ${whose}`,
      ['lines', input.job.lines.findIndex(({ id }) => id === lineId), 'askedPrice'],
      // Nothing at all is no price a document can hold.
      written > 0 ? written : policy.priceStep,
    );
  };
  const { margin, pay, selling, state } = figures;
  const meaning = `margin ${margin}, pays you ${pay} an hour, ${selling}`;
  return {
    label: `Price of ${whose}`,
    marks: figures.marks,
    flag: { value: figures.flag, onMove },
    bounds: figures.bounds,
    step: policy.priceStep,
    meaning: state === 'suggested' ? `${meaning}, suggested, no price decided yet` : meaning,
    format: figures.format,
    payToWorkBelow: figures.payToWorkBelow,
  };
}
