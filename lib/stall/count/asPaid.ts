import { taxAdded } from '@/lib/price/tax/taxOf';
import type { MinorUnits } from '@/shared/money';
import type { StallPlan } from '@/shared/schemas/stallPapers';

/** How the prices of a plan stand to tax. */
export type TaxTerms = Pick<StallPlan, 'taxMode' | 'tax'>;

/**
 * What a customer pays for what prices write, before coins: a ticket is taxed once, on its sum.
 *
 * @param written whole minor units; below 0 what goes back
 * @returns whole minor units, with tax where it is added to prices
 */
export const asPaid = ({ taxMode, tax }: TaxTerms, written: number): number =>
  taxMode === 'added' ? taxAdded(written as MinorUnits, tax).with : written;
