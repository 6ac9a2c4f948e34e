import type { Rate } from '@/shared/schemas/rate';
import type { RateUnit } from '@/shared/tables/rateCatalogue';
import type { TypicalRate } from '@/shared/tables/typicalRates';

/** How one rate of a machine, a sheet or a channel is shown and typed. */
export interface RateSpec<Part> {
  readonly key: string;
  readonly of: (part: Part) => Rate | null;
  readonly label: string;
  readonly unit: RateUnit;
  readonly typical: number | null;
  readonly hint?: string;
  readonly min?: number;
  readonly max?: number;
  /** True where nothing is said when it is missing. */
  readonly isOptional?: boolean;
}

/** A spec from the table of typical rates. */
export const rateSpec = <Part>(
  key: string,
  of: RateSpec<Part>['of'],
  { label, unit, typical }: TypicalRate,
  more: Pick<RateSpec<Part>, 'hint' | 'min' | 'max' | 'isOptional'> = {},
): RateSpec<Part> => ({ key, of, label, unit, typical, ...more });
