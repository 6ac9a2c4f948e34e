'use client';

import { MeasureField } from '@/app/_fields/MeasureField';
import { secondsWords } from '@/app/_words/stall/priceWords';
import type { PricesOfDay } from '@/lib/stall/prices/pricesOfDay';
import { secondPrice } from '@/lib/stall/prices/secondPrice';
import { numberLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import { type PricesPart, priceWriter } from './pricesOnScreen';

/** What a piece that was spoiled a little is sold for. */
export function SecondsField({ part, prices }: Readonly<{ part: PricesPart; prices: PricesOfDay | null }>) {
  const { workspace, id, stallDay } = part;
  const share = stallDay.prices.secondsShare ?? null;
  const { currency } = workspace.workshop;
  const secondsOf = (secondsShare: number) =>
    [...new Set(prices?.rows.map(({ price }) => price))].flatMap((first) => {
      const second = secondPrice({ secondsShare, currency }, toMinor(first, currency));
      return second === null ? [] : [{ first, second: fromMinor(second as MinorUnits, currency) }];
    });
  return (
    <MeasureField
      kind="share"
      label={secondsWords.label}
      width="narrow"
      value={share}
      {...numberLimits(stallDaySchema, ['prices', 'secondsShare'])}
      whenEmpty={secondsWords.whenEmpty}
      hint={secondsWords.hint(share === null ? [] : secondsOf(share), priceWriter(workspace))}
      onCommit={(to) =>
        workspace.setField({ kind: 'stallDay', id }, secondsWords.label, ['prices', 'secondsShare'], to)
      }
    />
  );
}
