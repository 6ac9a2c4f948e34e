'use client';

import { ChecksOfPart } from '@/app/_docket/common/ChecksOfPart';
import { Fieldset } from '@/app/_docket/common/Fieldset';
import { Fieldsets } from '@/app/_docket/common/Fieldsets';
import { useJob } from '@/app/_docket/common/useJob';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { NumberField } from '@/app/_fields/NumberField';
import { RateField } from '@/app/_fields/RateField';
import { TextField } from '@/app/_fields/TextField';
import { jobChoices } from '@/app/_words/docket/choiceWords';
import { numberLimits, textLimits } from '@/shared/limits';
import { type Artwork, artworkSchema } from '@/shared/schemas/artwork';
import type { FieldPath } from '@/shared/setIn';
import { otherTypicals } from '@/shared/tables/typicalRates';
import { ApprovalNote } from './ApprovalNote';
import { CoverageFields } from './CoverageFields';
import { FinestFields } from './FinestFields';
import { PixelFields } from './PixelFields';

type ArtworkFieldsProps = Readonly<{
  artwork: Artwork;
  id: string;
  /** Path of the placement in which it is typed. */
  place: FieldPath;
}>;

/** What is known of an artwork beside its picture: name, pixels and ink by hand, rights, versions, minutes. */
export function ArtworkFields({ artwork, id, place }: ArtworkFieldsProps) {
  const { artworkField } = useJob();
  const of = (label: string, ...path: FieldPath) =>
    artworkField(label, id, place, path, `${label} of ${artwork.name}`);
  const rights = of('Who may print it', 'rights');
  const state = of('Who may print it', 'rights', 'state');
  return (
    <Fieldsets>
      <Fieldset name="The picture">
        <TextField
          {...of('Name', 'name')}
          value={artwork.name}
          needed
          {...textLimits(artworkSchema, ['name'])}
        />
        {artwork.picture === null && <PixelFields artwork={artwork} id={id} place={place} />}
        <ChoiceField
          {...of('A colour the customer named', 'colourMatch')}
          value={artwork.colourMatch}
          choices={jobChoices.colourMatch}
        />
        <ChecksOfPart>
          <CheckField
            {...of('The picture itself is already mirrored', 'mirrored')}
            checked={artwork.mirrored}
          />
        </ChecksOfPart>
      </Fieldset>
      <CoverageFields artwork={artwork} id={id} place={place} />
      <FinestFields artwork={artwork} id={id} place={place} />
      <Fieldset name="Rights">
        <ChoiceField
          {...state}
          issue={rights.issue}
          caution={rights.caution}
          value={artwork.rights.state}
          choices={jobChoices.rights}
        />
        <TextField
          {...of('Note on the rights', 'rights', 'note')}
          value={artwork.rights.note}
          {...textLimits(artworkSchema, ['rights', 'note'])}
          rows={2}
          width="full"
          hint="Who said so, and where it is written. Where you are unsure, ask your local authority."
        />
      </Fieldset>
      <Fieldset name="Version and work">
        <NumberField
          {...of('Version', 'version')}
          value={artwork.version}
          needed
          {...numberLimits(artworkSchema, ['version'])}
          width="narrow"
        />
        <ApprovalNote artwork={artwork} id={id} />
        <RateField
          {...of('Minutes to check and prepare it', 'prepMinutes')}
          rate={artwork.prepMinutes}
          units={['min']}
          limits={numberLimits(artworkSchema, ['prepMinutes', 'value'])}
          typical={otherTypicals.prepMinutes.typical}
          hint="Once, whatever the quantity."
        />
      </Fieldset>
    </Fieldsets>
  );
}
