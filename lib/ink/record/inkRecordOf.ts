import type { InkPrints, InkRefill } from '@/shared/schemas/entries';
import type { Entry } from '@/shared/schemas/happened';

/** Something noted of ink, as the entry says it. */
type Noted<Body> = Readonly<Body> & { readonly id: string };

/** What the maker noted of ink: bottles poured in, always to the same mark, and what was printed. */
export interface InkRecord {
  readonly refills: readonly Noted<InkRefill>[];
  readonly runs: readonly Noted<InkPrints>[];
}

/** The entries that count, in the order in which they were noted. */
interface InkEntriesInForce {
  readonly inkRefill: readonly Entry<'inkRefill', InkRefill>[];
  readonly inkPrints: readonly Entry<'inkPrints', InkPrints>[];
}

/** Puts the record of ink together from what was noted. Its figures go by days, whenever they were written down. */
export const inkRecordOf = ({ inkRefill, inkPrints }: InkEntriesInForce): InkRecord => ({
  refills: inkRefill.map(({ id, body }) => ({ ...body, id })),
  runs: inkPrints.map(({ id, body }) => ({ ...body, id })),
});
