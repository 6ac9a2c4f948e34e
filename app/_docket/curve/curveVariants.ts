import type { CurveVariant } from '@/lib/studies/curve/curveVariant';
import type { Blank } from '@/shared/schemas/blank';
import type { JobInput } from '@/shared/schemas/request';

/** Another way of making the job, with the words for it. */
export interface NamedVariant {
  readonly key: string;
  readonly name: string;
  readonly variant: CurveVariant;
}

/** @returns the job's other sheets, other blanks of the same kind and sizes, and itself with one print less. */
export function curveVariants(
  { job, workshop }: JobInput,
  blanks: Readonly<Record<string, Blank>>,
): readonly NamedVariant[] {
  const named = (name: string, variant: CurveVariant): NamedVariant => ({
    key: JSON.stringify(variant),
    name,
    variant,
  });
  const sheets = workshop.sheets
    .filter(({ id }) => id !== job.sheetId)
    .map(({ id, name }) => named(`on ${name}`, { kind: 'sheet', sheetId: id }));
  const ofLines = job.lines.flatMap((line) => {
    const inLine = job.lines.length > 1 ? `, ${line.name}` : '';
    const present = blanks[line.blankId];
    const wanted = line.quantities.filter(({ quantity }) => quantity > 0).map(({ size }) => size);
    const otherBlanks = Object.entries(blanks)
      .filter(([id, { kind }]) => id !== line.blankId && kind === present?.kind)
      .filter(([, { sizes }]) => wanted.every((size) => sizes.some(({ name }) => name === size)))
      .map(([id, { name }]) => named(`on ${name}${inLine}`, { kind: 'blank', lineId: line.id, blankId: id }));
    const without =
      line.placements.length < 2
        ? []
        : line.placements.map(({ id, name }) =>
            named(`without ${name}${inLine}`, { kind: 'without', lineId: line.id, placementId: id }),
          );
    return [...otherBlanks, ...without];
  });
  return [...sheets, ...ofLines];
}
