'use client';

import { useState } from 'react';
import { KeptFileButton } from '@/app/_attachments/KeptFileButton';
import { Button } from '@/app/_controls/Button';
import { Disclosure } from '@/app/_controls/Disclosure';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { NotTaken } from '@/app/_supply/NotTaken';
import styles from '@/app/_supply/Supply.module.css';
import type { SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { useTaken } from '@/app/_supply/useTaken';
import { beyondWords, claimStateWords, deliveryCost, rowMarks } from '@/app/_words/supply/deliveryWords';
import { itemWords, unitOf } from '@/app/_words/supply/itemWords';
import { type DeliveryStanding, isOpen } from '@/lib/buying/received/claims';
import { deliveryIds } from '@/lib/buying/received/deliveryIds';
import { sameItem, stockKey } from '@/lib/stock/stockKey';
import { ClaimPart } from './ClaimPart';
import { PaidPrices } from './PaidPrices';

type DeliveryListProps = Readonly<{ supply: SupplyOnScreen; standings: readonly DeliveryStanding[] }>;

/** What came, the last first: what was counted, what was paid, what is claimed. */
export function DeliveryList({ supply, standings }: DeliveryListProps) {
  const { workspace, formatter, locale, supplierName } = supply;
  const [removed, setRemoved] = useState<string | null>(null);
  const { problem, taken } = useTaken();
  const takeBack = ({ delivery, steps }: DeliveryStanding) => {
    const label = `Take back the goods of ${formatter.day(delivery.body.day)}`;
    const ids = [...deliveryIds(delivery, workspace.entries.stockMove), ...steps.map(({ id }) => id)];
    const entries = ids.map((entryId) => ({ kind: 'takeBack' as const, body: { entryId } }));
    if (taken(workspace.note(label, entries))) setRemoved(label);
  };
  return (
    <>
      {standings.map((standing) => {
        const { delivery } = standing;
        const { body } = delivery;
        return (
          <Disclosure
            key={workspace.firstId(delivery.id)}
            level={3}
            id={`delivery-${workspace.firstId(delivery.id)}`}
            heading={`${formatter.day(body.day)}, ${supplierName(body.supplierId)}`}
            line={[
              deliveryCost(body, locale),
              ...(beyondOf(supply, standing).length > 0 ? [beyondWords.line] : []),
              ...(isOpen(standing) || standing.state !== 'none' ? [claimStateWords(standing, locale)] : []),
            ].join(' · ')}
          >
            <div className={styles.rows}>
              <DeliveryRows {...{ supply, standing }} />
              <Beyond {...{ supply, standing }} />
              {body.note !== '' && <p className={styles.quiet}>{body.note}</p>}
              <PaidPrices {...{ supply, delivery }} />
              <ClaimPart {...{ supply, standing }} />
              <div className={styles.acts}>
                {body.receipt !== null && (
                  <KeptFileButton attachment={body.receipt} readFile={workspace.readFile} />
                )}
                <Button kind="quiet" onPress={() => takeBack(standing)}>
                  Take these goods back out
                </Button>
              </div>
            </div>
          </Disclosure>
        );
      })}
      <NotTaken problem={problem} />
      <RemovedNote
        how="taken back"
        what={removed !== null && workspace.undoLabel === removed ? removed.replace(/^Take back /, '') : null}
        onUndo={() => void workspace.undo()}
      />
    </>
  );
}

// Helpers

type StandingProps = Readonly<{ supply: SupplyOnScreen; standing: DeliveryStanding }>;

function beyondOf({ beyond }: SupplyOnScreen, { delivery: { body } }: DeliveryStanding) {
  const came = body.supplyOrderId === null ? [] : (beyond.get(body.supplyOrderId) ?? []);
  return came.filter(({ item }) => body.rows.some((row) => sameItem(row.item, item)));
}

/** What may have been noted by two. */
function Beyond({ supply, standing }: StandingProps) {
  const { nameOf, formatter } = supply;
  return beyondOf(supply, standing).map(({ item, ordered, usable }) => (
    <p className={styles.caution} key={stockKey(item)}>
      {beyondWords.told(nameOf(item), formatter.number(usable, 2), formatter.number(ordered, 2))}
    </p>
  ));
}

function DeliveryRows({ supply: { workspace, formatter, nameOf }, standing: { delivery } }: StandingProps) {
  const { rows, supplyOrderId } = delivery.body;
  return (
    <ul>
      {rows.map((row, at) => {
        const marks = rowMarks(row, supplyOrderId !== null, formatter);
        const { unit } = itemWords(row.item, workspace);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: what was noted never changes its order
          <li key={at}>
            <strong>{formatter.number(row.counted)}</strong> {unitOf(unit, row.counted)}{' '}
            <bdi>{nameOf(row.item)}</bdi>
            {row.lot !== null && `, lot ${row.lot}`}
            {marks.length > 0 && <span className={styles.caution}> · {marks.join(' · ')}</span>}
          </li>
        );
      })}
    </ul>
  );
}
