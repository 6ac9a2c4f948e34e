'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import { TextField } from '@/app/_fields/TextField';
import { textLimits } from '@/shared/limits';
import { nameSchema } from '@/shared/schemas/basics';
import type { StockPlace } from '@/shared/schemas/stock';
import { z } from '@/shared/schemas/z';

type PlaceFieldProps = Readonly<{
  label: string;
  place: StockPlace;
  /** Names of the shops where something lies already. */
  shops: readonly string[];
  onPick: (place: StockPlace) => void;
}>;

/** Where it lies: at home, in the van, or at a shop, whose name is asked the first time. */
export function PlaceField({ label, place, shops, onPick }: PlaceFieldProps) {
  const known = place.kind === 'shop' && shops.includes(place.name) ? `shop ${place.name}` : place.kind;
  return (
    <>
      <ChoiceField<string>
        label={label}
        width="narrow"
        value={known}
        choices={[
          { value: 'home', label: 'Home' },
          { value: 'van', label: 'The van' },
          ...shops.map((name) => ({ value: `shop ${name}`, label: name })),
          { value: 'shop', label: 'Another shop' },
        ]}
        onCommit={(value) =>
          onPick(
            value === 'home' || value === 'van'
              ? { kind: value }
              : { kind: 'shop', name: value.slice('shop '.length) },
          )
        }
      />
      {known === 'shop' && (
        <TextField
          label="Name of the shop"
          width="narrow"
          value={place.kind === 'shop' ? place.name : ''}
          {...textLimits(shopSchema, ['name'])}
          onCommit={(name) => onPick({ kind: 'shop', name: name.trim() })}
        />
      )}
    </>
  );
}

// Helpers

const shopSchema = z.strictObject({ name: nameSchema });
