'use client';

import { Button } from '@/app/_controls/Button';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import { bodyOfKinds, takenEdits } from '@/app/_documents/takenEdits';
import { NotTaken } from '@/app/_supply/NotTaken';
import styles from '@/app/_supply/Supply.module.css';
import type { SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { useTaken } from '@/app/_supply/useTaken';
import { paidPlacesWords, paidWords } from '@/app/_words/supply/deliveryWords';
import type { DeliveryStanding } from '@/lib/buying/received/claims';
import { type PaidPrice, paidPrices } from '@/lib/buying/received/paidPrices';
import { takeBack, takeOver } from '@/lib/learning/takeOver';
import type { RateTaken } from '@/shared/schemas/making/learnedEvents';

type PaidPricesProps = Readonly<{ supply: SupplyOnScreen; delivery: DeliveryStanding['delivery'] }>;

/**
 * What was paid beside what is reckoned with, a button for each to take over: nothing follows a bill by itself. What was
 * taken over is taken back by one tap, each place as it was.
 */
export function PaidPrices({ supply, delivery }: PaidPricesProps) {
  const { workspace, nameOf, formatter, today } = supply;
  const { problem, taken: kept } = useTaken();
  const documents = { ...workspace, workshopId: WORKSHOP_ID };
  const paid = paidPrices(delivery.body, documents, today);
  const taken = workspace.entries.rateTaken.filter(
    ({ body, at }) => at >= delivery.at && ofDelivery(body, delivery.body.rows),
  );
  if (paid.length + taken.length === 0) return null;
  const money = (amount: number) => formatter.smallMoney(amount);
  const bodyOf = bodyOfKinds(workspace);
  const take = ({ item, lesson }: PaidPrice) => {
    const { edits, body } = takeOver(lesson, bodyOf, today);
    kept(workspace.note(`Price of ${nameOf(item)}`, [{ kind: 'rateTaken', body }], takenEdits(edits)));
  };
  return (
    <div>
      <h4 className={styles.sub}>Prices paid</h4>
      <RowList label="Prices paid">
        {paid.map((one) => (
          <ListRow
            key={nameOf(one.item)}
            acts={
              <Button
                spoken={`Take over ${money(one.lesson.measured)} for ${nameOf(one.item)}`}
                onPress={() => take(one)}
              >
                Take over {money(one.lesson.measured)}
              </Button>
            }
          >
            {paidWords(nameOf(one.item), money(one.lesson.measured), beforeOf(one, money))}
            <p className={styles.quiet}>{paidPlacesWords(one.lesson.places)}</p>
          </ListRow>
        ))}
        {taken.map(({ id, body }) => {
          const item = itemOf(body, delivery.body.rows);
          const name = item === null ? 'A price' : nameOf(item);
          const { edits, left } = takeBack(body, bodyOf);
          const isHeld = left.length === 0;
          return (
            <ListRow
              key={id}
              acts={
                <Button
                  kind="quiet"
                  spoken={`Take back ${money(body.value)} for ${name}`}
                  blockedBy={isHeld ? undefined : 'It was changed since; taking it back would undo that too.'}
                  onPress={() =>
                    void kept(
                      workspace.note(
                        `Take back the price of ${name}`,
                        [{ kind: 'takeBack', body: { entryId: id } }],
                        takenEdits(edits),
                      ),
                    )
                  }
                >
                  Take it back
                </Button>
              }
            >
              {name}: {money(body.value)} taken over on {formatter.day(body.day)}
              {!isHeld && <p className={styles.quiet}>Changed since.</p>}
            </ListRow>
          );
        })}
      </RowList>
      <NotTaken problem={problem} />
    </div>
  );
}

// Helpers

type Taken = RateTaken;
type Rows = DeliveryStanding['delivery']['body']['rows'];

function beforeOf({ lesson }: PaidPrice, money: (amount: number) => string): string | null {
  const before = lesson.places[0]?.before ?? null;
  if (before === null) return null;
  return money(typeof before === 'number' ? before : 'value' in before ? before.value : 0);
}

/** The thing of a delivery that a price taken over is of; null where it is of something else. */
function itemOf({ subject }: Taken, rows: Rows): Rows[number]['item'] | null {
  const found = rows.find(({ item }) => {
    switch (item.kind) {
      case 'blank':
        return subject.of === 'blankPrice' && subject.blankId === item.blankId && subject.size === item.size;
      case 'paper':
        return subject.of === 'sheetPrice' && subject.sheetId === item.sheetId;
      case 'consumable':
        return subject.of === 'consumablePrice' && subject.consumableId === item.consumableId;
      case 'ink':
        return subject.of === 'inkPrice';
      default:
        return item satisfies never;
    }
  });
  return found?.item ?? null;
}

const ofDelivery = (taken: Taken, rows: Rows): boolean => itemOf(taken, rows) !== null;
