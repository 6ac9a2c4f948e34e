'use client';

import type { Region } from '@/lib/examples/regionOf';
import { sameValue } from '@/lib/merging/sameValue';
import { ChoiceField } from './ChoiceField';
import { currencyChoices } from './currencyChoices';
import { FieldGroup } from './FieldGroup';
import { localeChoices } from './localeChoices';
import { unitSets } from './unitSets';

type RegionFieldsProps = Readonly<{ region: Region; onRegion: (region: Region) => void }>;

/** Asks for what a workshop cannot begin without: its money, its units, how its numbers are written. */
export function RegionFields({ region, onRegion }: RegionFieldsProps) {
  const units = unitSets.find(({ units: set }) => sameValue(set, region.units));
  return (
    <FieldGroup>
      <ChoiceField
        label="Your money"
        value={region.currency}
        choices={currencyChoices(region.currency)}
        onCommit={(currency) => onRegion({ ...region, currency })}
      />
      <ChoiceField
        label="Units at your bench"
        value={units?.name ?? null}
        choices={unitSets.map(({ name, label }) => ({ value: name, label }))}
        onCommit={(name) =>
          onRegion({ ...region, units: unitSets.find((set) => set.name === name)?.units ?? region.units })
        }
      />
      <ChoiceField
        label="Numbers and dates as in"
        value={region.locale}
        choices={localeChoices(region.locale)}
        onCommit={(locale) => onRegion({ ...region, locale })}
      />
    </FieldGroup>
  );
}
