import type { InkFit } from '@/lib/ink/record/fitInkRecord';
import { rateInUnit } from '@/lib/job/rateInUnit';
import type { Rate } from '@/shared/schemas/rate';
import type { Workshop } from '@/shared/schemas/workshop';

type Rates = Workshop['rates'];

/** The rates a record of ink would put in force, beside those that are. */
interface MeasuredInk {
  readonly rates: Partial<Pick<Rates, 'laydown' | 'sessionInk'>>;
  /** They are what the workshop has already. */
  readonly isInForce: boolean;
  /** An older reading of the record is in force. */
  readonly isNewer: boolean;
}

/** Figures this near are one: a rate keeps twelve digits. */
const ALIKE = 1e-9;

/**
 * @param today day the rates are dated with, YYYY-MM-DD
 * @returns laydown in the unit the maker types it in, and the session loss where the record could tell it
 */
export function measuredInk(fit: InkFit, rates: Rates, today: string): MeasuredInk {
  if (fit.kind !== 'fitted') return { rates: {}, isInForce: false, isNewer: false };
  const measured = { date: today, origin: 'measured' } as const;
  const inInches = {
    ...measured,
    value: fit.laydownMlPerIn2.value,
    unit: 'mL/in2',
    count: fit.prints,
  } as const;
  const unit = rates.laydown?.unit ?? 'mL/in2';
  const laydown: Rate = { ...inInches, unit, value: tidy(rateInUnit(inInches, unit)) };
  const session: Rate | null =
    fit.of === 'both'
      ? { ...measured, value: tidy(fit.sessionMl.value), unit: 'mL', count: fit.intervals }
      : null;
  const wanted: readonly (readonly [Rate | null, Rate])[] = [
    [rates.laydown, laydown],
    ...(session === null ? [] : [[rates.sessionInk, session] as const]),
  ];
  return {
    rates: { laydown, ...(session === null ? {} : { sessionInk: session }) } as MeasuredInk['rates'],
    isInForce: wanted.every(([now, next]) => now !== null && isSame(now, next)),
    isNewer: rates.laydown?.origin === 'measured',
  };
}

const tidy = (value: number): number => Number(value.toPrecision(12));

const isSame = (now: Rate, next: Rate): boolean =>
  now.origin === 'measured' &&
  now.count === next.count &&
  Math.abs(rateInUnit(now, next.unit) - next.value) <= ALIKE * next.value;
