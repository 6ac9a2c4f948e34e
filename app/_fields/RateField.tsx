'use client';

import { useId } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { classes } from '@/app/_controls/classes';
import { useMeasures } from '@/app/_numbers/measures';
import { unitEdge } from '@/app/_numbers/unitEdge';
import { unitWords } from '@/app/_words/unitWords';
import { rateInUnit } from '@/lib/job/rateInUnit';
import { DOUBLE_DIGITS } from '@/shared/decimal';
import type { NumberLimits } from '@/shared/limits';
import type { Rate } from '@/shared/schemas/rate';
import { currencyDigits } from '@/shared/tables/currencies';
import type { RateUnit } from '@/shared/tables/rateCatalogue';
import { ChoiceField } from './ChoiceField';
import { NumberField } from './NumberField';
import styles from './RateField.module.css';
import { RateFoot } from './RateFoot';

export type RateFieldProps<Unit extends RateUnit = RateUnit> = Readonly<{
  label: string;
  rate: Rate<Unit> | null;
  /** Units it may be typed in, the usual one first. */
  units: readonly [Unit, ...Unit[]];
  /** The typical value in the first unit; null where nothing is typical. */
  typical: number | null;
  /** Told with the day and *yours* when typed; null when emptied, which is missing and not 0. */
  onCommit: (rate: Rate<Unit> | null) => void;
  onRest?: (() => void) | undefined;
  /** What its schema takes, in the unit of the rate. */
  limits: NumberLimits;
  hint?: string | undefined;
  /** A finding about the value in force, as a sentence. */
  issue?: string | undefined;
  caution?: string | undefined;
  /** What it means that it is missing; nothing is said where nobody needs it. */
  whenMissing?: string | undefined;
  /** True where a label for the id stands elsewhere, and with it the mark. */
  labelled?: boolean | undefined;
  width?: 'narrow' | 'normal' | 'full' | undefined;
  id?: string | undefined;
}>;

/** A rate with its unit, its mark, the day it was set, and the way back to what is typical. */
export function RateField<Unit extends RateUnit>(props: RateFieldProps<Unit>) {
  const { label, rate, units, onCommit, onRest, hint, caution, whenMissing, labelled, width } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  const today = useToday();
  const measures = useMeasures();
  const unit = rate?.unit ?? units[0];
  const isPair = units.length > 1;
  const isShare = unit === 'share';
  const percent = unitEdge('share', measures);
  const shown = (value: number) => (isShare ? percent.shown(value) : value);
  const yours = (typed: number): Rate<Unit> => ({
    value: isShare ? percent.kept(typed) : typed,
    unit,
    date: today,
    origin: 'yours',
  });
  const inUnit = (wanted: Unit) => {
    if (rate === null) return;
    const value = Number(rateInUnit(rate, wanted).toPrecision(DOUBLE_DIGITS - 3));
    onCommit({ ...rate, value, unit: wanted });
  };
  return (
    <div className={width === undefined && !labelled ? styles.rate : undefined}>
      <div className={isPair ? classes(styles.pair, labelled && styles.level) : undefined}>
        <NumberField
          {...{ id, label, labelled, hint, caution, onRest }}
          width={isPair ? 'full' : width}
          unit={isPair ? undefined : isShare ? '%' : unitWords(unit, measures.currency)}
          value={rate === null ? null : shown(rate.value)}
          minDecimals={unit.startsWith('money') ? (currencyDigits(measures.currency) ?? 0) : 0}
          {...props.limits}
          edge={isShare ? percent : undefined}
          origin={rate?.origin}
          count={rate?.count}
          issue={props.issue ?? (rate === null ? whenMissing : undefined)}
          onCommit={(typed) => onCommit(typed === null ? null : yours(typed))}
        />
        {isPair && (
          <ChoiceField
            label={`Unit of ${label}`}
            labelled
            width="full"
            value={unit}
            choices={units.map((value) => ({ value, label: unitWords(value, measures.currency) }))}
            onCommit={inUnit}
          />
        )}
      </div>
      <RateFoot {...{ label, rate, typical: props.typical, unit: units[0], onCommit, today }} />
    </div>
  );
}
