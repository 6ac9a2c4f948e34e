'use client';

import type { CurveVariant } from '@/lib/jobs/curveVariant';
import type { JobInput } from '@/shared/schemas/request';
import { useMaker } from '../_documents/useMaker';
import { ChoiceField } from '../_fields/ChoiceField';

type CurveVariantChoiceProps = Readonly<{
  input: JobInput;
  chosen: CurveVariant | null;
  onChoose: (variant: CurveVariant | null) => void;
}>;

const NONE = 'none';

/** Another sheet, another blank or one print less, to be laid over the curve. */
export function CurveVariantChoice({ input, chosen, onChoose }: CurveVariantChoiceProps) {
  const { blanks } = useMaker();
  const options = variantsOf(input, blanks);
  if (options.length === 0) return null;
  return (
    <ChoiceField
      label="Lay over it"
      value={chosen === null ? NONE : JSON.stringify(chosen)}
      choices={[
        { value: NONE, label: 'nothing else' },
        ...options.map(({ variant, label }) => ({ value: JSON.stringify(variant), label })),
      ]}
      onCommit={(value) =>
        onChoose(options.find(({ variant }) => JSON.stringify(variant) === value)?.variant ?? null)
      }
    />
  );
}

// Helpers

interface Option {
  readonly variant: CurveVariant;
  readonly label: string;
}

function variantsOf(
  { job, workshop }: JobInput,
  blanks: Readonly<
    Record<
      string,
      { readonly name: string; readonly kind: string; readonly sizes: readonly { readonly name: string }[] }
    >
  >,
): readonly Option[] {
  const of = (name: string) => (job.lines.length > 1 ? ` for ${name}` : '');
  return [
    ...workshop.sheets
      .filter(({ id }) => id !== job.sheetId)
      .map(({ id, name }): Option => ({ variant: { kind: 'sheet', sheetId: id }, label: `on ${name}` })),
    ...job.lines.flatMap((line) => {
      const present = blanks[line.blankId];
      const wanted = line.quantities.filter(({ quantity }) => quantity > 0).map(({ size }) => size);
      return Object.entries(blanks)
        .filter(
          ([id, blank]) =>
            id !== line.blankId &&
            blank.kind === present?.kind &&
            wanted.every((size) => blank.sizes.some(({ name }) => name === size)),
        )
        .map(
          ([id, { name }]): Option => ({
            variant: { kind: 'blank', lineId: line.id, blankId: id },
            label: `${name}${of(line.name)}`,
          }),
        );
    }),
    ...job.lines.flatMap((line) =>
      line.placements.length < 2
        ? []
        : line.placements.map(
            ({ id, name }): Option => ({
              variant: { kind: 'without', lineId: line.id, placementId: id },
              label: `without ${name}${of(line.name)}`,
            }),
          ),
    ),
  ];
}
