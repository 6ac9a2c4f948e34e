'use client';

import { CheckField } from '@/app/_fields/CheckField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { chargeChoices } from '@/app/_words/priceLists/paperWords';
import { numberLimits } from '@/shared/limits';
import {
  type ListedCharge,
  listedCharges,
  listItemSchema,
  type PriceListItem,
} from '@/shared/schemas/priceList';
import { currencyDigits } from '@/shared/tables/currencies';
import styles from './PriceLists.module.css';

type ItemChargesProps = Readonly<{
  item: PriceListItem;
  name: string;
  currency: string;
  /** Quick changes with the same key undo as one. */
  onChange: (label: string, change: Partial<PriceListItem>, key?: string) => void;
}>;

/** The charges that are named beside an item, each suggested or at an amount of the maker's own. */
export function ItemCharges({ item, name, currency, onChange }: ItemChargesProps) {
  const tick = (kind: ListedCharge, isListed: boolean) =>
    onChange(`${chargeChoices[kind]} on the list`, {
      charges: listedCharges.filter((one) => (one === kind ? isListed : item.charges.includes(one))),
    });
  const setAmount = (kind: ListedCharge, amount: number | null) => {
    const others = item.ownAmounts.filter((one) => one.kind !== kind);
    onChange(
      `${chargeChoices[kind]} on the list`,
      { ownAmounts: amount === null ? others : [...others, { kind, amount }] },
      kind,
    );
  };
  return (
    <>
      <fieldset className={styles.ticks}>
        <legend className="visuallyHidden">Charges named beside {name}</legend>
        {listedCharges.map((kind) => (
          <CheckField
            key={kind}
            label={chargeChoices[kind]}
            checked={item.charges.includes(kind)}
            onCommit={(isListed) => tick(kind, isListed)}
          />
        ))}
      </fieldset>
      {item.charges.length > 0 && (
        <fieldset className={styles.amounts}>
          <legend className={styles.quiet}>Your own amounts; left empty, the suggested one is listed</legend>
          <FieldGroup pairs>
            {item.charges.map((kind) => (
              <NumberField
                key={kind}
                label={chargeChoices[kind]}
                unit={currency}
                value={item.ownAmounts.find((one) => one.kind === kind)?.amount ?? null}
                {...numberLimits(listItemSchema, ['ownAmounts', 0, 'amount'])}
                decimals={currencyDigits(currency) ?? 2}
                hint={
                  kind === 'minimumOrder'
                    ? 'Left out where the first order of the list pays it, or one piece has one price.'
                    : undefined
                }
                onCommit={(amount) => setAmount(kind, amount)}
              />
            ))}
          </FieldGroup>
        </fieldset>
      )}
    </>
  );
}
