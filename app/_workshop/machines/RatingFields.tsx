'use client';

import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { numberLimits } from '@/shared/limits';
import { type Press, pressSchema } from '@/shared/schemas/workshop';
import type { FieldPath } from '@/shared/setIn';

type RatingFieldsProps = Readonly<{ fields: WorkshopFields; press: Press; path: FieldPath }>;

/** What the maker of a press states of it: how wide it opens, how much it bears in a day. */
export function RatingFields({ fields: { set }, press, path }: RatingFieldsProps) {
  const of = (label: string, key: keyof Press['rating']) => ({
    label,
    id: workshopFieldId([...path, 'rating', key]),
    value: press.rating[key],
    width: 'narrow' as const,
    onCommit: (value: number | null) => set(`${label}, ${press.name}`, [...path, 'rating', key], value),
  });
  return (
    <FieldGroup pairs>
      <MeasureField
        {...of('It opens', 'openingMm')}
        kind="length"
        {...numberLimits(pressSchema, ['rating', 'openingMm'])}
        hint="Empty where nobody measured."
      />
      <NumberField
        {...of('Rated for, a day', 'pressesPerDay')}
        unit="presses"
        {...numberLimits(pressSchema, ['rating', 'pressesPerDay'])}
        hint="As its maker states."
      />
      <NumberField
        {...of('Rated to be hot, a day', 'hotHoursPerDay')}
        unit="h"
        {...numberLimits(pressSchema, ['rating', 'hotHoursPerDay'])}
        hint="As its maker states."
      />
    </FieldGroup>
  );
}
