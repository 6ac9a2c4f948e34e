'use client';

import { useMeasures } from '@/app/_numbers/measures';
import { useNumberLocale } from '@/app/_numbers/numberLocale';
import { unitEdge } from '@/app/_numbers/unitEdge';
import { formatterFor } from '@/app/_words/formatter';
import { unitWords } from '@/app/_words/unitWords';
import { daysBetween } from '@/shared/days';
import { formatNumber } from '@/shared/formatNumber';
import type { Rate } from '@/shared/schemas/rate';
import { currencyDigits } from '@/shared/tables/currencies';
import type { RateUnit } from '@/shared/tables/rateCatalogue';
import { thresholds } from '@/shared/tables/thresholds';
import { typicalMoneyCurrencies } from '@/shared/tables/typicalRates';
import styles from './RateField.module.css';

type RateFootProps<Unit extends RateUnit> = Readonly<{
  label: string;
  rate: Rate<Unit> | null;
  typical: number | null;
  /** Unit of the typical value. */
  unit: Unit;
  onCommit: (rate: Rate<Unit>) => void;
  today: string;
}>;

/** Beneath a rate: the day it was set, whether that is long ago, and the typical value to fall back on. */
export function RateFoot<Unit extends RateUnit>({
  label,
  rate,
  unit,
  onCommit,
  today,
  ...given
}: RateFootProps<Unit>) {
  const measures = useMeasures();
  const { currency } = measures;
  const locale = useNumberLocale();
  const formatter = formatterFor({ locale, ...measures });
  const shareEdge = unitEdge('share', measures);
  const minDecimals = unit.startsWith('money') ? (currencyDigits(currency) ?? 0) : 0;
  const isKnown = !unit.startsWith('money') || typicalMoneyCurrencies.includes(currency);
  const typical = isKnown ? given.typical : null;
  const isTypical = rate?.origin === 'typical';
  // Empty it keeps its height, so that nothing moves when the first key makes the rate the maker's own.
  if (isTypical) return <div className={styles.foot} />;
  const isSame = rate !== null && rate.unit === unit && rate.value === typical;
  const isShare = unit === 'share';
  // A unit that stands above already is only spoken.
  const isShown = rate !== null && rate.unit !== unit;
  const age = rate === null ? 0 : daysBetween(rate.date, today);
  return (
    <div className={styles.foot}>
      {rate !== null && <span>set {formatter.day(rate.date)}</span>}
      {age > thresholds.rateAge.note.value && (
        <span className={styles.old}>older than {thresholds.rateAge.note.value} days</span>
      )}
      {age < 0 && <span className={styles.old}>dated in the future</span>}
      {typical !== null && !isSame && (
        <button
          className={styles.back}
          type="button"
          onClick={() => onCommit({ value: typical, unit, date: today, origin: 'typical' })}
        >
          {rate === null ? 'Take the typical ' : 'Back to typical '}
          {formatNumber(isShare ? shareEdge.shown(typical) : typical, locale, { minDecimals })}{' '}
          <span className={isShown ? undefined : 'visuallyHidden'}>
            {isShare ? '%' : unitWords(unit, currency)}
          </span>{' '}
          <span className="visuallyHidden">for {label}</span>
        </button>
      )}
    </div>
  );
}
