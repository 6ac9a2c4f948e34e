'use client';

import { CardSection } from '@/app/_controls/CardSection';
import { Fold } from '@/app/_controls/Fold';
import { Answer } from '@/app/_docket/common/Answer';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { halfTyped } from '@/app/_fields/formMemory';
import { NumberField } from '@/app/_fields/NumberField';
import { clockWords } from '@/app/_words/clockWords';
import { bridgeWords, foundWords, plannedHours, resultAnswer } from '@/app/_words/stall/evening/resultWords';
import { slipNames } from '@/app/_words/stall/evening/slipNames';
import { fromHomeWords } from '@/app/_words/stall/fromHomeWords';
import { broughtFromHome } from '@/lib/stall/broughtFromHome';
import { eveningAnswersSchema } from '@/lib/stall/evening/eveningAnswers';
import { numberLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits } from '@/shared/money';
import { BridgeRows } from './BridgeRows';
import styles from './Slips.module.css';
import { Sums } from './Sums';
import { WeatherFields } from './WeatherFields';

/** What the day leaves, and how it came to be otherwise than planned. */
export function ResultSlip({ on }: Readonly<{ on: EveningOnScreen }>) {
  const { evening, answers, say, formatter, locale } = on;
  const { bridge, plan, result, count } = evening;
  const fromHome = fromHomeWords(
    evening.rows.reduce((sum, { brought, goods }) => sum + broughtFromHome(brought, goods.fromHome), 0),
    formatter,
  );
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
          <Sums rows={profitRows(on)} />
          {fromHome !== null && <p className={styles.quiet}>{fromHome}</p>}
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

/** Each step to the profit; what was sold costs what is not told elsewhere. */
function profitRows({ evening, formatter }: EveningOnScreen) {
  const { money, result, plan, rows } = evening;
  const units = (minor: number) => fromMinor(minor as MinorUnits, plan.currency);
  const packaging = rows.reduce((sum, row) => sum + row.sold * row.goods.packaging, 0);
  const fees = units(money.fees + money.commission);
  const net = units(money.net);
  const making = net - fees - packaging - (result.contribution ?? 0);
  const found = rows.reduce((sum, row) => sum + row.found, 0);
  const figure = (amount: number) => formatter.money(amount);
  return [
    { name: 'takings without tax', figure: figure(net) },
    { name: 'fees', figure: figure(-fees) },
    { name: 'packaging', figure: figure(-packaging) },
    { name: 'making what was sold', figure: figure(-making) },
    { name: 'contribution', figure: figure(result.contribution ?? 0), isSum: true },
    { name: 'the day and its batch, your pay inside', figure: figure(-result.fixed) },
    ...(result.spent < LEAST ? [] : [{ name: bridgeWords.spent, figure: figure(-result.spent) }]),
    { name: 'leftovers written down', figure: figure(-(result.writtenDown ?? 0)) },
    ...(['given', 'damaged', 'missing'] as const).flatMap((what) => {
      const cost = result.goneAs?.[what] ?? 0;
      return cost < LEAST ? [] : [{ name: bridgeWords[what], figure: figure(-cost) }];
    }),
    ...(found === 0 ? [] : [{ name: foundWords(formatter.count(found, 'piece')), figure: figure(0) }]),
    ...(Math.abs(result.tin) < LEAST ? [] : [{ name: 'tin and coins', figure: figure(result.tin) }]),
    { name: 'profit', figure: figure(result.profit ?? 0), isSum: true },
  ];
}

/** Currency units that no coin pays. */
const LEAST = 0.005;
