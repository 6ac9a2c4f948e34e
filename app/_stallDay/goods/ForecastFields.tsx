'use client';

import { stallFieldId } from '@/app/_documents/fieldAddress';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { RateField } from '@/app/_fields/RateField';
import { wholePieces } from '@/app/_numbers/wholePieces';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { forecastChoices, visitorsHint, visitorsLabel } from '@/app/_words/stall/goodsWords';
import type { PastDay } from '@/lib/stall/plan/demand/pastDay';
import { numberLimits } from '@/shared/limits';
import { type StallForecast, stallDaySchema } from '@/shared/schemas/stallDay';
import { PastDayChoice } from './PastDayChoice';

type ForecastFieldsProps = Readonly<{ on: StallOnScreen; past: readonly PastDay[] }>;

/** Where the number of pieces comes from, and what that asks for. */
export function ForecastFields({ on, past }: ForecastFieldsProps) {
  const { stallDay, set } = on;
  const { forecast } = stallDay;
  const offered = forecastChoices.filter(
    ({ value }) => value !== 'pastDays' || past.length > 0 || forecast.from === 'pastDays',
  );
  return (
    <>
      <FieldGroup>
        <ChoiceField
          label="How many will be asked for, by"
          id={stallFieldId(['forecast'])}
          value={forecast.from}
          choices={offered}
          onCommit={(from) => set('Where the forecast comes from', ['forecast'], freshForecast(from))}
        />
        {forecast.from === 'visitors' && (
          <>
            <NumberField
              label={visitorsLabel}
              id={stallFieldId(['forecast', 'visitors'])}
              width="narrow"
              {...wholePieces}
              value={forecast.visitors}
              {...numberLimits(stallDaySchema, ['forecast', 'visitors'])}
              whenEmpty="Without them there is no forecast."
              hint={visitorsHint(stallDay.days.length)}
              onCommit={(to) => set(visitorsLabel, ['forecast', 'visitors'], to)}
            />
            <RateField
              label="Who stops, of those"
              id={stallFieldId(['forecast', 'stopShare'])}
              rate={forecast.stopShare}
              units={['share']}
              typical={TYPICAL.stop}
              limits={numberLimits(stallDaySchema, ['forecast', 'stopShare', 'value'])}
              onCommit={(to) => set('Who stops', ['forecast', 'stopShare'], to)}
            />
            <RateField
              label="Who buys, of those who stop"
              id={stallFieldId(['forecast', 'buyShare'])}
              rate={forecast.buyShare}
              units={['share']}
              typical={TYPICAL.buy}
              limits={numberLimits(stallDaySchema, ['forecast', 'buyShare', 'value'])}
              onCommit={(to) => set('Who buys', ['forecast', 'buyShare'], to)}
            />
          </>
        )}
      </FieldGroup>
      {forecast.from === 'pastDays' && <PastDayChoice {...{ on, forecast, past }} />}
    </>
  );
}

// Helpers

/** One in ten stops, one in ten of those buys: the middle of what is common. [from memory] */
const TYPICAL = { stop: 0.1, buy: 0.1 } as const;

function freshForecast(from: StallForecast['from']): StallForecast {
  switch (from) {
    case 'typed':
      return { from };
    case 'visitors':
      return { from, visitors: null, stopShare: null, buyShare: null };
    case 'pastDays':
      return { from, stallDayIds: [], footfallRatio: 1 };
    default:
      return from satisfies never;
  }
}
