'use client';

import { Button } from '@/app/_controls/Button';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { itemChoices } from '@/app/_supply/itemChoices';
import styles from '@/app/_supply/Supply.module.css';
import { itemName, itemWords, unitOf } from '@/app/_words/supply/itemWords';
import { tierCaution } from '@/app/_words/supply/supplierWords';
import { stockKey } from '@/lib/stock/stockKey';
import { mostEntries, numberLimits, textLimits } from '@/shared/limits';
import { type Supplier, supplierSchema } from '@/shared/schemas/making/supply';
import { currencyDigits } from '@/shared/tables/currencies';
import type { SupplierFields } from './supplierFields';

type Offer = Supplier['offers'][number];
type OfferFieldsProps = Readonly<{ fields: SupplierFields; offer: Offer }>;

const at = ['offers', 0] as const;
const tierAt = [...at, 'tiers', 0] as const;
const NOTHING = 'nothing';

/** What a supplier asks for one thing: article, pack, price steps, and what else it may stand in for. */
export function OfferFields({ fields, offer }: OfferFieldsProps) {
  const { workspace, changeOffer, removeOffer, fieldId } = fields;
  const name = itemName(offer.item, workspace);
  const { unit } = itemWords(offer.item, workspace);
  const set = (label: string, change: Partial<Offer>) =>
    changeOffer(`${label} of ${name}`, offer.id, (now) => ({ ...now, ...change }));
  const others = itemChoices(workspace).filter(({ item }) => stockKey(item) !== stockKey(offer.item));
  const standsInFor = offer.standsInFor === null ? NOTHING : stockKey(offer.standsInFor);
  return (
    <div className={styles.editor}>
      <FieldGroup>
        <TextField
          label="Article number"
          id={fieldId('offers', offer.id, 'articleNumber')}
          value={offer.articleNumber}
          {...textLimits(supplierSchema, [...at, 'articleNumber'])}
          onCommit={(articleNumber) => set('Article number', { articleNumber })}
        />
        <NumberField
          label="Sold in packs of"
          unit={unitOf(unit, 2)}
          needed
          value={offer.packSize}
          {...numberLimits(supplierSchema, [...at, 'packSize'])}
          hint="1 where singly."
          onCommit={(packSize) => packSize !== null && set('Pack', { packSize })}
        />
        <DateField
          label="Prices as of"
          value={offer.pricedOn}
          onCommit={(pricedOn) => set('Day of the price', { pricedOn })}
        />
      </FieldGroup>
      <TierFields {...{ fields, offer, name }} />
      <ChoiceField
        label="May stand in for"
        value={standsInFor}
        choices={[
          { value: NOTHING, label: 'Nothing else' },
          ...others.map(({ value, label, group }) => ({ value, label, group })),
        ]}
        hint="Offered where that is not to be had in time."
        onCommit={(key) =>
          set('What may be replaced by', {
            standsInFor: others.find(({ value }) => value === key)?.item ?? null,
          })
        }
      />
      <div className={styles.acts}>
        <Button
          kind="quiet"
          spoken={`Remove the offer of ${name}`}
          onPress={() => removeOffer(`Remove the offer of ${name}`, offer.id)}
        >
          Remove the offer
        </Button>
      </div>
    </div>
  );
}

// Helpers

/** Prices by quantity; each step holds until the next begins. */
function TierFields({ fields, offer, name }: OfferFieldsProps & { readonly name: string }) {
  const { workspace, formatter, today, changeOffer } = fields;
  const { currency } = workspace.workshop;
  const { tiers } = offer;
  const setTiers = (to: (now: Offer['tiers']) => Offer['tiers'], isPrice: boolean) =>
    changeOffer(`Price of ${name}`, offer.id, (now) => ({
      ...now,
      tiers: to(now.tiers),
      pricedOn: isPrice ? today : now.pricedOn,
    }));
  const setTier = (place: number, change: Partial<Offer['tiers'][number]>) =>
    setTiers(
      (now) => now.map((tier, index) => (index === place ? { ...tier, ...change } : tier)),
      change.each !== undefined,
    );
  const last = tiers.at(-1);
  const most = mostEntries(supplierSchema, [...at, 'tiers']);
  return (
    <div className={styles.rows}>
      {tiers.map((tier, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a step is its place, and has no other name
        <fieldset className={styles.set} key={place}>
          <legend className={styles.quiet}>
            {tiers.length === 1 ? 'Price' : `Price, step ${place + 1}`}
          </legend>
          <FieldGroup pairs>
            <NumberField
              label={place === 0 ? 'From, the least that is sold' : 'From'}
              width="narrow"
              needed
              value={tier.from}
              {...numberLimits(supplierSchema, [...tierAt, 'from'])}
              caution={tierCaution(tiers, place, formatter)}
              onCommit={(from) => from !== null && setTier(place, { from })}
            />
            <NumberField
              label="Each"
              width="narrow"
              unit={currency}
              minDecimals={currencyDigits(currency) ?? 2}
              needed
              value={tier.each}
              {...numberLimits(supplierSchema, [...tierAt, 'each'])}
              caution={
                tier.each === 0 ? 'At 0 it would be bought here for nothing. Type what it costs.' : undefined
              }
              onCommit={(each) => each !== null && setTier(place, { each })}
            />
            {tiers.length > 1 && (
              <Button
                kind="quiet"
                spoken={`Remove step ${place + 1}`}
                onPress={() => setTiers((now) => now.filter((_, index) => index !== place), false)}
              >
                Remove
              </Button>
            )}
          </FieldGroup>
        </fieldset>
      ))}
      <div className={styles.acts}>
        <Button
          blockedBy={tiers.length >= most ? `An offer keeps ${most} steps at most.` : undefined}
          onPress={() =>
            last !== undefined &&
            setTiers((now) => [...now, { from: Math.max(1, last.from) * 2, each: last.each }], false)
          }
        >
          Add a price from more
        </Button>
      </div>
    </div>
  );
}
