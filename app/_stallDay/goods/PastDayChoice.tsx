'use client';

import { stallFieldId } from '@/app/_documents/fieldAddress';
import { CheckField } from '@/app/_fields/CheckField';
import { NumberField } from '@/app/_fields/NumberField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import type { PastDay } from '@/lib/stall/plan/demand/pastDay';
import { numberLimits } from '@/shared/limits';
import { type StallForecast, stallDaySchema } from '@/shared/schemas/stallDay';

type PastDayChoiceProps = Readonly<{
  on: StallOnScreen;
  forecast: Extract<StallForecast, { from: 'pastDays' }>;
  past: readonly PastDay[];
}>;

/** Which closed days the forecast rests on, and how many come beside them. */
export function PastDayChoice({ on: { set, formatter }, forecast, past }: PastDayChoiceProps) {
  const { stallDayIds, footfallRatio } = forecast;
  return (
    <>
      {past.map(({ stallDayId, name, day }) => (
        <CheckField
          key={stallDayId}
          label={`${name}, ${formatter.day(day)}`}
          checked={stallDayIds.includes(stallDayId)}
          onCommit={(isChosen) =>
            set(
              `Learn from ${name}`,
              ['forecast', 'stallDayIds'],
              isChosen ? [...stallDayIds, stallDayId] : stallDayIds.filter((one) => one !== stallDayId),
            )
          }
        />
      ))}
      <NumberField
        label="Visitors for each one on those days"
        id={stallFieldId(['forecast', 'footfallRatio'])}
        width="narrow"
        needed
        value={footfallRatio}
        {...numberLimits(stallDaySchema, ['forecast', 'footfallRatio'])}
        hint="1 where as many will come, 1.5 where half as many again."
        onCommit={(to) => set('Visitors for each one on those days', ['forecast', 'footfallRatio'], to)}
      />
    </>
  );
}
