'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { currencyChoices } from '@/app/_workshop/currencyChoices';
import { localeChoices } from '@/app/_workshop/localeChoices';
import type { Region } from '@/lib/examples/regionOf';
import { sameValue } from '@/lib/stored/sameValue';
import { unitSets } from './unitSets';

type HomeFieldsProps = Readonly<{ region: Region; onHome: (region: Region) => void }>;

/** Asks for what a workshop cannot begin without: its money, its units, how its numbers are written. */
export function HomeFields({ region, onHome }: HomeFieldsProps) {
  const units = unitSets.find(({ units: set }) => sameValue(set, region.units));
  return (
    <FieldGroup>
      <ChoiceField
        label="Your money"
        value={region.currency}
        choices={currencyChoices()}
        onCommit={(currency) => onHome({ ...region, currency })}
      />
      <ChoiceField
        label="Units at your bench"
        value={units?.name ?? null}
        choices={unitSets.map(({ name, label }) => ({ value: name, label }))}
        onCommit={(name) =>
          onHome({ ...region, units: unitSets.find((set) => set.name === name)?.units ?? region.units })
        }
      />
      <ChoiceField
        label="Numbers and dates as in"
        value={region.locale}
        choices={localeChoices(region.locale)}
        onCommit={(locale) => onHome({ ...region, locale })}
      />
    </FieldGroup>
  );
}
