import type { CostedJob } from '@/lib/grid/costJob';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { Blank } from '@/shared/schemas/blank';
import type { JobInput } from '@/shared/schemas/request';
import type { LeverDraft } from './lever';

/** Changes of what is bought: a cheaper blank the maker has, another sheet of the workshop. */
export function purchaseLevers(input: JobInput, { laidOut }: CostedJob): readonly LeverDraft[] {
  const blanks = laidOut.job.lines.flatMap((line, index) =>
    Object.entries(input.blanks)
      .filter(([id, blank]) => id !== line.line.blankId && isCheaperLike(line, blank))
      .map(
        ([id, blank]): LeverDraft => ({
          id: 'cheaperBlank',
          facts: { blank: blank.name, instead: line.blank.name },
          changes: [{ document: 'job', path: ['lines', index, 'blankId'], value: id }],
        }),
      ),
  );
  const sheets = input.workshop.sheets
    .filter(({ id, price }) => id !== input.job.sheetId && price !== null)
    .map(
      ({ id, name }): LeverDraft => ({
        id: 'otherSheet',
        facts: { sheet: name, instead: laidOut.job.sheet.name },
        changes: [{ document: 'job', path: ['sheetId'], value: id }],
      }),
    );
  return [...blanks, ...sheets];
}

/** The same kind of thing that follows the same recipe, in every size that is wanted, for less money. */
function isCheaperLike(line: ResolvedLine, blank: Blank): boolean {
  // What a customer brings is no purchase.
  if (blank.suppliedBy === 'customer' || blank.kind !== line.blank.kind) return false;
  if (blank.substrate !== line.blank.substrate) return false;
  let saved = 0;
  for (const { size, quantity, blankPrice } of line.sizes) {
    const price = blank.sizes.find(({ name }) => name === size)?.price;
    if (price == null) return false;
    saved += quantity * (blankPrice.value - price.value);
  }
  return saved > 0;
}
