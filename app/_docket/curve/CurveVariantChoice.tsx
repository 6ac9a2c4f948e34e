'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { NamedVariant } from './curveVariants';

type CurveVariantChoiceProps = Readonly<{
  variants: readonly NamedVariant[];
  /** A variant's key, or that of what little and much spoilage would do; null for nothing. */
  chosen: string | null;
  hasSpread: boolean;
  onChoose: (key: string | null) => void;
}>;

const NONE = '';
export const SPOILAGE = 'spoilage';

/** Another sheet, another blank or one print less, to be laid over the curve. */
export function CurveVariantChoice({ variants, chosen, hasSpread, onChoose }: CurveVariantChoiceProps) {
  if (variants.length === 0 && !hasSpread) return null;
  return (
    <ChoiceField
      label="Laid over it"
      value={chosen ?? NONE}
      choices={[
        { value: NONE, label: 'nothing' },
        ...(hasSpread ? [{ value: SPOILAGE, label: 'what little or much spoilage would do' }] : []),
        ...variants.map(({ key, name }) => ({ value: key, label: `the job ${name}` })),
      ]}
      onCommit={(key) => onChoose(key === NONE ? null : key)}
    />
  );
}
