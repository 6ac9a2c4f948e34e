'use client';

import { useState } from 'react';
import { Fieldset } from '@/app/_docket/common/Fieldset';
import { fieldId } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { MeasureField } from '@/app/_fields/MeasureField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { numberLimits } from '@/shared/limits';
import { type Artwork, artworkSchema } from '@/shared/schemas/artwork';
import type { FieldPath } from '@/shared/setIn';
import { TYPICAL_TOTAL_COVERAGE } from '@/shared/tables/typicalRates';

type CoverageFieldsProps = Readonly<{ artwork: Artwork; id: string; place: FieldPath }>;

const channels = ['cyan', 'magenta', 'yellow', 'black'] as const;
type Amounts = Readonly<Record<(typeof channels)[number] | 'total', number | null>>;
type Way = 'unknown' | 'total' | 'channels';

const nothing: Amounts = { total: null, cyan: null, magenta: null, yellow: null, black: null };
const waysOf = (hasPicture: boolean) =>
  [
    { value: 'unknown', label: hasPicture ? 'read from the file' : 'not known' },
    { value: 'total', label: 'all channels together' },
    { value: 'channels', label: 'by channel' },
  ] as const;

/** How much ink a picture takes. The artwork takes all channels at once; some alone wait here for the rest. */
export function CoverageFields({ artwork, id, place }: CoverageFieldsProps) {
  const { artworkField } = useJob();
  const formatter = formatterFor(useTextContext());
  const { coverage } = artwork;
  const own = artworkField(`Ink coverage of ${artwork.name}`, id, place, ['coverage']);
  const [way, setWay] = useState<Way>(coverage?.kind ?? 'unknown');
  const [amounts, setAmounts] = useState<Amounts>(nothing);
  const [seen, setSeen] = useState(coverage);
  if (coverage !== seen) {
    setSeen(coverage);
    // Changed from outside, by undo: the way of typing follows it.
    if (coverage !== null && coverage.kind !== way) setWay(coverage.kind);
  }
  const shown: Amounts = { ...amounts, ...(coverage?.kind === way ? coverage : {}) };

  const set = (next: Amounts) => {
    setAmounts(next);
    const { total, cyan, magenta, yellow, black } = next;
    if (way === 'total') own.onCommit(total === null ? null : { kind: 'total', total });
    else if (cyan !== null && magenta !== null && yellow !== null && black !== null)
      own.onCommit({ kind: 'channels', cyan, magenta, yellow, black });
    else if (coverage?.kind === 'channels') own.onCommit(null);
  };
  const change = (next: Way) => {
    setWay(next);
    if (next === 'unknown') own.onCommit(null);
  };
  const waits = way === 'channels' && coverage?.kind !== 'channels';
  const at = (name: string) => fieldId([...place, 'artwork', 'coverage', name]);
  return (
    <Fieldset name="Ink, as a share of the print’s whole box">
      <ChoiceField
        label="Coverage is typed"
        id={own.id}
        issue={own.issue}
        caution={own.caution}
        value={way}
        choices={waysOf(artwork.picture !== null)}
        hint={
          way === 'unknown' && artwork.picture !== null
            ? 'Choose another to use a figure of your own.'
            : way === 'unknown'
              ? `${formatter.share(TYPICAL_TOTAL_COVERAGE)} in all stands in, typical.`
              : waits
                ? 'All four are needed before they count.'
                : undefined
        }
        onCommit={change}
      />
      {way === 'total' && (
        <MeasureField
          id={at('total')}
          label="All channels together"
          kind="share"
          value={shown.total}
          {...numberLimits(artworkSchema, ['coverage', 'total'])}
          width="narrow"
          onCommit={(total) => set({ ...shown, total })}
        />
      )}
      {way === 'channels' &&
        channels.map((channel) => (
          <MeasureField
            key={channel}
            id={at(channel)}
            label={channel}
            kind="share"
            value={shown[channel]}
            {...numberLimits(artworkSchema, ['coverage', channel])}
            width="narrow"
            onCommit={(amount) => set({ ...shown, [channel]: amount })}
          />
        ))}
    </Fieldset>
  );
}
