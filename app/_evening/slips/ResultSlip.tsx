'use client';

import { CardSection } from '@/app/_controls/CardSection';
import { Fold } from '@/app/_controls/Fold';
import { Answer } from '@/app/_docket/common/Answer';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { laterParts } from '@/app/_evening/laterParts';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { halfTyped } from '@/app/_fields/formMemory';
import { NumberField } from '@/app/_fields/NumberField';
import { LaterPart } from '@/app/_network/LaterPart';
import { clockWords } from '@/app/_words/clockWords';
import { plannedHours, resultAnswer } from '@/app/_words/stall/evening/resultWords';
import { slipNames } from '@/app/_words/stall/evening/slipNames';
import { eveningAnswersSchema } from '@/lib/stall/evening/eveningAnswers';
import { numberLimits } from '@/shared/limits';
import { BridgeRows } from './BridgeRows';
import { Sums } from './Sums';
import { WeatherFields } from './WeatherFields';

/** What the day leaves, and how it came to be otherwise than planned. */
export function ResultSlip({ on }: Readonly<{ on: EveningOnScreen }>) {
  const { evening, answers, say, formatter, locale } = on;
  const { bridge, plan, result, count } = evening;
  return (
    <CardSection
      numeral={5}
      id="evening-result"
      heading={slipNames.result.heading}
      answer={<Answer words={resultAnswer(evening, formatter)} />}
    >
      {bridge !== null && <BridgeRows {...{ bridge, locale }} currency={plan.currency} />}
      <FieldGroup>
        {plan.weathers.length > 1 && <WeatherFields on={on} />}
        <NumberField
          label="Hours the day took"
          unit="h"
          width="narrow"
          value={answers.hours ?? plan.costs.hours}
          {...numberLimits(eveningAnswersSchema, ['hours'])}
          hint={plannedHours(answers.hours, plan.costs.hours, locale)}
          half={halfTyped(on.form, 'hours')}
          onCommit={(hours) => say({ hours })}
        />
      </FieldGroup>
      {result.profit !== null && (
        <Fold summary="Takings to profit" line="fees, packaging, making, leftovers">
          <LaterPart part={laterParts.profit} what="How the profit came about" props={{ on }} />
        </Fold>
      )}
      {count.hours.length > 0 && (
        <Fold summary="Sales by the hour" line={formatter.count(count.hours.length, 'hour')}>
          <Sums
            rows={count.hours.map(({ day, hour, pieces }) => ({
              name: `${isOnlyDay(on, day) ? '' : `${formatter.day(day)}, `}${clockWords(hour * 60, locale)}`,
              figure: formatter.count(pieces, 'piece'),
            }))}
          />
        </Fold>
      )}
    </CardSection>
  );
}

// Helpers

/** A day that the plan does not name is told: the clock was wrong. */
const isOnlyDay = ({ evening: { plan } }: EveningOnScreen, day: string): boolean =>
  plan.days.length === 1 && plan.days[0]?.day === day;
