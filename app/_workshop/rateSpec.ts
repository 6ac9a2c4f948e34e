import type { NumberLimits } from '@/shared/limits';
import type { Rate } from '@/shared/schemas/rate';
import type { RateUnit } from '@/shared/tables/rateCatalogue';
import type { TypicalRate } from '@/shared/tables/typicalRates';

/** What of a part is a rate. */
export type RateKey<Part> = { [Key in keyof Part]: Part[Key] extends Rate | null ? Key : never }[keyof Part];

/** How one rate of a machine, a sheet or a channel is shown and typed. */
export interface RateSpec<Part> {
  readonly key: string;
  readonly of: (part: Part) => Rate | null;
  readonly label: string;
  readonly unit: RateUnit;
  readonly typical: number | null;
  readonly hint?: string;
  readonly limits: NumberLimits;
  /** True where nothing is said when it is missing. */
  readonly isOptional?: boolean;
}

/** A spec from the table of typical rates. */
export const rateSpec = <Part>(
  kept: Pick<RateSpec<Part>, 'key' | 'of' | 'limits'>,
  { label, unit, typical }: TypicalRate,
  more: Pick<RateSpec<Part>, 'hint' | 'isOptional'> = {},
): RateSpec<Part> => ({ ...kept, label, unit, typical, ...more });
