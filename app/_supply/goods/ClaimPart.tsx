'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { AmountField } from '@/app/_fields/AmountField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { saveBlob } from '@/app/_files/saveBlob';
import { NotTaken } from '@/app/_supply/NotTaken';
import styles from '@/app/_supply/Supply.module.css';
import type { SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { useTaken } from '@/app/_supply/useTaken';
import { claimStateWords, claimText } from '@/app/_words/supply/deliveryWords';
import type { DeliveryStanding } from '@/lib/buying/received/claims';
import { sameItem } from '@/lib/stock/stockKey';
import { numberLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { orderNumberText } from '@/shared/orderNumberText';
import { type FaultClaim, faultClaimSchema } from '@/shared/schemas/making/supplyEvents';

type ClaimPartProps = Readonly<{ supply: SupplyOnScreen; standing: DeliveryStanding }>;

const amountLimits = numberLimits(faultClaimSchema, ['step', 'amountMinor']);

/** What came faulty or not at all: the words to tell the supplier, and what came of it. */
export function ClaimPart({ supply, standing }: ClaimPartProps) {
  const { workspace, today, locale } = supply;
  const { delivery, wrong, state, steps } = standing;
  const { currency } = delivery.body;
  const [isOpen, setOpen] = useState(false);
  const [isRefunding, setRefunding] = useState(false);
  const [amount, setAmount] = useState<number | null>(null);
  const [told, setTold] = useState('');
  const { problem, taken } = useTaken();
  if (wrong.length === 0) return null;
  const from = supply.supplierName(delivery.body.supplierId);
  const note = (label: string, step: FaultClaim['step']) =>
    taken(
      workspace.note(`${label}: ${from}`, [
        { kind: 'faultClaim', body: { goodsInId: delivery.id, day: today, step } },
      ]),
    );
  const text = textOf(supply, standing);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setTold('Copied.');
    } catch {
      setTold('This browser does not let a page copy. Mark the words and copy them, or save them.');
    }
  };
  const last = steps.at(-1);
  const missing = amount === null || amount === 0 ? 'What came back comes first.' : undefined;
  return (
    <div className={styles.rows}>
      <p role="status">{claimStateWords(standing, locale)}</p>
      <div className={styles.acts}>
        <Button expanded={isOpen} onPress={() => setOpen(!isOpen)}>
          {state === 'none' ? 'Claim it' : 'The words of the claim'}
        </Button>
        {state === 'claimed' && (
          <>
            <Button expanded={isRefunding} onPress={() => setRefunding(!isRefunding)}>
              Refunded
            </Button>
            <Button onPress={() => void note('Replaced', { what: 'replaced', note: '' })}>Replaced</Button>
            <Button onPress={() => void note('Refused', { what: 'refused', note: '' })}>Refused</Button>
          </>
        )}
        {last !== undefined && (
          <Button
            kind="quiet"
            onPress={() =>
              void taken(
                workspace.note('Take back a step of the claim', [
                  { kind: 'takeBack', body: { entryId: last.id } },
                ]),
              )
            }
          >
            Take the last step back
          </Button>
        )}
      </div>
      <NotTaken problem={problem} />
      {isRefunding && state === 'claimed' && (
        <EntryForm
          label="Refunded"
          className={styles.form}
          missing={missing}
          onEnter={() => {
            if (amount === null) return;
            const amountMinor = toMinor(amount, currency);
            if (!note('Refunded', { what: 'refunded', amountMinor, currency, note: '' })) return;
            setRefunding(false);
            setAmount(null);
          }}
        >
          <AmountField
            label="Came back"
            currency={currency}
            minorLimits={amountLimits}
            value={amount}
            onCommit={setAmount}
          />
          <div className={styles.acts}>
            <Button type="submit" kind="strong" blockedBy={missing}>
              Note it
            </Button>
          </div>
        </EntryForm>
      )}
      {isOpen && (
        <>
          <p className={styles.letter}>{text}</p>
          <div className={styles.acts}>
            <Button onPress={() => void copy()}>Copy the words</Button>
            <Button
              kind="quiet"
              onPress={() => saveBlob('Claim.txt', new Blob([text], { type: 'text/plain;charset=utf-8' }))}
            >
              Save them
            </Button>
            {state === 'none' && (
              <Button
                kind="strong"
                onPress={() =>
                  void note('Claimed', {
                    what: 'claimed',
                    rows: wrong.map(({ item, faulty, missing: short }) => ({ item, pieces: faulty + short })),
                    note: '',
                  })
                }
              >
                Note it as sent
              </Button>
            )}
            <span role="status">{told}</span>
          </div>
        </>
      )}
    </div>
  );
}

// Helpers

function textOf(
  { workspace, formatter, locale, nameOf }: SupplyOnScreen,
  { delivery: { body }, wrong }: DeliveryStanding,
): string {
  const { seller, name } = workspace.workshop;
  const supplier = workspace.suppliers[body.supplierId ?? ''];
  const order = workspace.papers.supplyOrder.find(({ id }) => id === body.supplyOrderId);
  return claimText(
    {
      wrong: wrong.map((row) => ({
        ...row,
        name: nameOf(row.item),
        counted: body.rows.reduce(
          (sum, { item, counted }) => sum + (sameItem(item, row.item) ? counted : 0),
          0,
        ),
        articleNumber: supplier?.offers.find(({ item }) => sameItem(item, row.item))?.articleNumber ?? '',
      })),
      day: formatter.day(body.day),
      orderNumber: order === undefined ? null : orderNumberText(order.body.number),
      customerNumber: supplier?.customerNumber ?? '',
      from: seller.name.trim() === '' ? name : seller.name,
      currency: body.currency,
    },
    formatter,
    locale,
  );
}
