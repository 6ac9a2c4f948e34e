'use client';

import type { Home } from '@/lib/examples/homeOf';
import { sameValue } from '@/lib/stored/sameValue';
import { ChoiceField } from '../_fields/ChoiceField';
import { FieldGroup } from '../_fields/FieldGroup';
import { currencyChoices } from '../_workshop/currencyChoices';
import { localeChoices } from '../_workshop/localeChoices';
import { unitSets } from './unitSets';

type HomeFieldsProps = Readonly<{ home: Home; onHome: (home: Home) => void }>;

/** Asks for what a workshop cannot begin without: its money, its units, how its numbers are written. */
export function HomeFields({ home, onHome }: HomeFieldsProps) {
  const units = unitSets.find(({ units: set }) => sameValue(set, home.units));
  return (
    <FieldGroup>
      <ChoiceField
        label="Your money"
        value={home.currency}
        choices={currencyChoices()}
        onCommit={(currency) => onHome({ ...home, currency })}
      />
      <ChoiceField
        label="Units at your bench"
        value={units?.name ?? null}
        choices={unitSets.map(({ name, label }) => ({ value: name, label }))}
        onCommit={(name) =>
          onHome({ ...home, units: unitSets.find((set) => set.name === name)?.units ?? home.units })
        }
      />
      <ChoiceField
        label="Numbers and dates as in"
        value={home.locale}
        choices={localeChoices(home.locale)}
        onCommit={(locale) => onHome({ ...home, locale })}
      />
    </FieldGroup>
  );
}
