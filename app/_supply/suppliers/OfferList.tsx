'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Disclosure } from '@/app/_controls/Disclosure';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { NumberField } from '@/app/_fields/NumberField';
import { itemChoices } from '@/app/_supply/itemChoices';
import { NotTaken } from '@/app/_supply/NotTaken';
import styles from '@/app/_supply/Supply.module.css';
import { useTaken } from '@/app/_supply/useTaken';
import { itemName } from '@/app/_words/supply/itemWords';
import { offerLine } from '@/app/_words/supply/supplierWords';
import { stockKey } from '@/lib/stock/stockKey';
import { mostEntries, numberLimits } from '@/shared/limits';
import { supplierSchema } from '@/shared/schemas/making/supply';
import { OfferFields } from './OfferFields';
import { ownPrice, type SupplierFields } from './supplierFields';

/** What a supplier sells to the maker, thing by thing. */
export function OfferList({ fields }: Readonly<{ fields: SupplierFields }>) {
  const { supplier, workspace, formatter, fieldId } = fields;
  return (
    <section>
      <h4 className={styles.sub}>Offers</h4>
      {supplier.offers.map((offer) => (
        <Disclosure
          key={offer.id}
          level={4}
          id={fieldId('offers', offer.id)}
          heading={itemName(offer.item, workspace)}
          line={offerLine(offer, formatter)}
        >
          <OfferFields {...{ fields, offer }} />
        </Disclosure>
      ))}
      {supplier.offers.length === 0 && (
        <p className={styles.none}>Nothing yet. Without offers a buying list reckons with your own prices.</p>
      )}
      <NewOffer fields={fields} />
    </section>
  );
}

// Helpers

/** One thing, or every size of a blank at once. */
function NewOffer({ fields }: Readonly<{ fields: SupplierFields }>) {
  const { supplier, workspace, addOffers } = fields;
  const [chosen, setChosen] = useState<string | null>(null);
  const [each, setEach] = useState<number | null>(null);
  const adding = useTaken();
  const taken = new Set(supplier.offers.map(({ item }) => stockKey(item)));
  const things = itemChoices(workspace).filter(({ value }) => !taken.has(value));
  const ofBlank = new Map<string, typeof things>();
  for (const thing of things)
    if (thing.item.kind === 'blank')
      ofBlank.set(thing.item.blankId, [...(ofBlank.get(thing.item.blankId) ?? []), thing]);
  const all = [...ofBlank].flatMap(([blankId, sizes]) =>
    sizes.length > 1
      ? [{ value: `all ${blankId}`, label: `${sizes[0]?.group ?? ''}, all sizes`, items: sizes }]
      : [],
  );
  const items =
    all.find(({ value }) => value === chosen)?.items ?? things.filter(({ value }) => value === chosen);
  const label = all.find(({ value }) => value === chosen)?.label ?? items[0]?.label ?? '';
  const most = mostEntries(supplierSchema, ['offers']);
  const isUnpriced = items.some(({ item }) => ownPrice(item, workspace) === null);
  const blocked =
    items.length === 0
      ? 'What is sold comes first.'
      : supplier.offers.length + items.length > most
        ? `A supplier keeps ${most} offers at most.`
        : isUnpriced && each === null
          ? 'What one costs comes first.'
          : undefined;
  return (
    <div className={styles.adding}>
      <ChoiceField
        label="A further offer of"
        value={items.length === 0 ? null : chosen}
        choices={[
          ...all.map(({ value, label: words }) => ({ value, label: words })),
          ...things.map(({ value, label: words, group }) => ({ value, label: words, group })),
        ]}
        onCommit={setChosen}
      />
      {isUnpriced && (
        <NumberField
          label="Each"
          width="narrow"
          unit={workspace.workshop.currency}
          value={each}
          {...numberLimits(supplierSchema, ['offers', 0, 'tiers', 0, 'each'])}
          onCommit={setEach}
        />
      )}
      <Button
        blockedBy={blocked}
        onPress={() => {
          const offered = items.map(({ item }) => item);
          if (!adding.taken(addOffers(`Offer of ${label}`, offered, each))) return;
          setChosen(null);
          setEach(null);
        }}
      >
        Add it
      </Button>
      <NotTaken problem={adding.problem} />
    </div>
  );
}
