'use client';

import Link from 'next/link';
import type { ReactNode } from 'react';
import { useTextContext } from '@/app/_fields/useTextContext';
import { chargeWords, rushWords } from '@/app/_words/docket/chargeWords';
import { taxWords } from '@/app/_words/docket/taxWords';
import { formatterFor } from '@/app/_words/formatter';
import type { Charge, ChargesAnswer } from '@/lib/studies/charges/chargesAnswer';
import { formatMinor } from '@/shared/money';
import type { Channel } from '@/shared/schemas/workshop';
import styles from './ChargeSection.module.css';

/** Every charge, those beside the price first: what it is, what it stands on, what to write. */
export function ChargeList({
  found,
  taxMode,
}: Readonly<{ found: ChargesAnswer; taxMode: Channel['taxMode'] }>) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { charges, rush, currency } = found;
  const rows = (kind: Charge['borne']['kind']) =>
    charges
      .filter(({ borne }) => borne.kind === kind)
      .map((charge) => {
        const { key, name, says, amount } = chargeWords(charge, currency, formatter);
        return (
          <Row key={key} name={name} says={says}>
            {amount === null ? '–' : formatMinor(amount, currency, context.locale)}
          </Row>
        );
      });
  const inPrice = rows('inPrice');
  return (
    <>
      <h3 className={styles.group}>Beside the price</h3>
      <dl className={styles.charges}>
        {rows('apart')}
        <Row name="Rush" says={rushWords(rush, formatter)}>
          {rush?.outcome.kind === 'rush' ? `+ ${formatter.share(rush.outcome.share)}` : '–'}
        </Row>
      </dl>
      {inPrice.length > 0 && (
        <>
          <h3 className={styles.group}>
            In the price already; to be charged apart only where you take it out
          </h3>
          <dl className={styles.charges}>{inPrice}</dl>
        </>
      )}
      <p className={styles.assumes}>
        Each is its cost, own pay included, at the target margin and on your price ending; the least order at
        the profit you set for one; {taxWords(taxMode)}.{' '}
        <Link href="/workshop#charges">Minutes, least charges and rush shares</Link> are set in the workshop.
        Set-up and art charges can be taxed too: ask your local authority.
      </p>
    </>
  );
}

// Helpers

type RowProps = Readonly<{ name: string; says: string; children: ReactNode }>;

function Row({ name, says, children }: RowProps) {
  return (
    <div className={styles.charge}>
      <dt>
        <span className={styles.name}>{name}</span>
        <span className={styles.says}>{says}</span>
      </dt>
      <dd className={styles.amount}>{children}</dd>
    </div>
  );
}
