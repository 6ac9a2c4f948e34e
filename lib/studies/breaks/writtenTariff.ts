import type { Tariff } from '@/lib/studies/curve/fitTariff';
import { type MinorUnits, toPriceEnding } from '@/shared/money';
import { currencyDigits } from '@/shared/tables/currencies';

/** “So much to start, so much a piece” as it is written, whole minor units. */
export interface WrittenTariff {
  readonly currency: string;
  readonly start: MinorUnits;
  readonly each: MinorUnits;
}

/**
 * Lifts a fitted line to whole minor units. The line goes through the middle of the totals, so that the batches it
 * lies under miss the target by as much as its error says.
 *
 * @param tariff unrounded, without tax
 * @param currency ISO 4217 code
 * @param tax share that written prices carry inside, 0 where they are without
 * @returns null for a line that starts or rises below 0: it is no way to sell
 */
export function writtenTariff(tariff: Tariff, currency: string, tax = 0): WrittenTariff | null {
  const unit = 10 ** -(currencyDigits(currency) ?? 2);
  const start = toPriceEnding(tariff.start * (1 + tax), unit, currency);
  const each = toPriceEnding(tariff.each * (1 + tax), unit, currency);
  return start < 0 || each < 0 ? null : { currency, start, each };
}
