'use client';

import { useState } from 'react';
import { ChecksOfPart } from '@/app/_docket/common/ChecksOfPart';
import { Fieldset } from '@/app/_docket/common/Fieldset';
import { fieldId } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { CheckField } from '@/app/_fields/CheckField';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { numberLimits } from '@/shared/limits';
import { type Artwork, artworkSchema } from '@/shared/schemas/artwork';
import type { FieldPath } from '@/shared/setIn';

type FinestFieldsProps = Readonly<{ artwork: Artwork; id: string; place: FieldPath }>;

interface Draft {
  readonly atWidthMm: number | null;
  readonly capHeightMm: number | null;
  readonly lineMm: number | null;
  readonly reversed: boolean;
}

const nothing: Draft = { atWidthMm: null, capHeightMm: null, lineMm: null, reversed: false };

/** The smallest letters and lines of a picture, measured at one width of it: no program can tell them for sure. */
export function FinestFields({ artwork, id, place }: FinestFieldsProps) {
  const { artworkField } = useJob();
  const { onCommit } = artworkField(`Smallest parts of ${artwork.name}`, id, place, ['finest']);
  const [draft, setDraft] = useState<Draft>(artwork.finest ?? nothing);
  const shown = artwork.finest ?? draft;
  const set = (next: Draft) => {
    setDraft(next);
    const { atWidthMm, ...parts } = next;
    const isTold = atWidthMm !== null && (parts.capHeightMm !== null || parts.lineMm !== null);
    if (isTold) onCommit({ atWidthMm, ...parts });
    else if (artwork.finest !== null) onCommit(null);
  };
  const isHalf = (shown.atWidthMm === null) !== (shown.capHeightMm === null && shown.lineMm === null);
  const idOf = (key: string) => fieldId([...place, 'artwork', 'finest', key]);
  const millimetres = { unit: 'mm', width: 'narrow' } as const;
  return (
    <Fieldset name="Smallest letters and lines">
      <NumberField
        {...millimetres}
        id={idOf('capHeightMm')}
        {...numberLimits(artworkSchema, ['finest', 'capHeightMm'])}
        label="Height of the smallest capitals"
        value={shown.capHeightMm}
        hint="Empty where there are no letters."
        onCommit={(capHeightMm) => set({ ...shown, capHeightMm })}
      />
      <NumberField
        {...millimetres}
        id={idOf('lineMm')}
        {...numberLimits(artworkSchema, ['finest', 'lineMm'])}
        label="Width of the thinnest line"
        value={shown.lineMm}
        onCommit={(lineMm) => set({ ...shown, lineMm })}
      />
      <MeasureField
        id={idOf('atWidthMm')}
        kind="length"
        width="narrow"
        label="Measured with the picture this wide"
        value={shown.atWidthMm}
        {...numberLimits(artworkSchema, ['finest', 'atWidthMm'])}
        caution={isHalf ? 'A measure and the width it was taken at are needed together.' : undefined}
        onCommit={(atWidthMm) => set({ ...shown, atWidthMm })}
      />
      <ChecksOfPart>
        <CheckField
          id={idOf('reversed')}
          label="They are light on dark"
          checked={shown.reversed}
          onCommit={(reversed) => set({ ...shown, reversed })}
        />
      </ChecksOfPart>
    </Fieldset>
  );
}
