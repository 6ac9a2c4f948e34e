'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { NamedVariant } from './curveVariants';

type CurveVariantChoiceProps = Readonly<{
  variants: readonly NamedVariant[];
  chosen: NamedVariant | null;
  onChoose: (key: string | null) => void;
}>;

const NONE = '';

/** Another sheet, another blank or one print less, to be laid over the curve. */
export function CurveVariantChoice({ variants, chosen, onChoose }: CurveVariantChoiceProps) {
  if (variants.length === 0) return null;
  return (
    <ChoiceField
      label="Laid over it"
      value={chosen?.key ?? NONE}
      choices={[
        { value: NONE, label: 'nothing' },
        ...variants.map(({ key, name }) => ({ value: key, label: `the job ${name}` })),
      ]}
      onCommit={(key) => onChoose(key === NONE ? null : key)}
    />
  );
}
