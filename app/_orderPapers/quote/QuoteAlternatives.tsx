'use client';

import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { NumberField } from '@/app/_fields/NumberField';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { useOrderStudy } from '@/app/_studies/useOrderStudy';
import { alternativeName, offerWords } from '@/app/_words/orders/quote/alternativeWords';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import { mostEntries, numberLimits } from '@/shared/limits';
import { type Alternative, orderSchema } from '@/shared/schemas/order';
import type { OrderFields } from './orderFields';

type QuoteAlternativesProps = Readonly<{
  of: OrderOnPaper;
  fields: OrderFields;
  asked: QuoteAsked | null;
}>;

const MOST = mostEntries(orderSchema, ['alternatives']);

/** What the customer may choose beside what was asked: up to two, from what the sums offer or typed. */
export function QuoteAlternatives({ of, fields, asked }: QuoteAlternativesProps) {
  const { goods, formatter, locale, workspace } = of;
  const { order, change } = fields;
  const { currency } = workspace.workshop;
  const jobs = goods.jobs.map(({ jobId, input }) => ({ jobId, job: input.job }));
  const { newest } = useOrderStudy('offers', asked, null);
  const isFull = order.alternatives.length >= MOST;
  const blockedBy = isFull ? `A quote takes ${MOST}. Take one off first.` : undefined;
  const add = (alternative: Alternative, label: string) =>
    change(`Offer ${label}`, (now) =>
      now.alternatives.length >= MOST ? now : { ...now, alternatives: [...now.alternatives, alternative] },
    );
  const setOne = (id: string, to: (one: Alternative) => Alternative) =>
    change(
      'Alternative',
      (now) => ({ ...now, alternatives: now.alternatives.map((one) => (one.id === id ? to(one) : one)) }),
      `alternative ${id}`,
    );
  const offers = newest?.answer ?? [];
  return (
    <div className={styles.list}>
      {order.alternatives.map((one) => {
        const name = alternativeName(one, jobs, formatter);
        return (
          <div key={one.id} className={styles.line} id={`quote-alternative-${one.id}`}>
            {one.kind === 'pieces' ? (
              <NumberField
                label={name}
                unit="pieces in all"
                value={one.quantity}
                needed
                {...quantityLimits}
                onCommit={(quantity) =>
                  quantity !== null &&
                  setOne(one.id, (now) => (now.kind === 'pieces' ? { ...now, quantity } : now))
                }
              />
            ) : (
              <NumberField
                label={name}
                unit={`${currency} a piece`}
                value={one.each}
                {...numberLimits(orderSchema, ['alternatives', 0, 'each'])}
                hint="Empty: as the sums suggest."
                whenEmpty="Until then it is as the sums suggest."
                onCommit={(each) =>
                  setOne(one.id, (now) => (now.kind === 'without' ? { ...now, each } : now))
                }
              />
            )}
            <Button
              kind="quiet"
              spoken={`Take off ${name}`}
              onPress={() =>
                change(`Take ${name} off`, (now) => ({
                  ...now,
                  alternatives: now.alternatives.filter(({ id }) => id !== one.id),
                }))
              }
            >
              Take off
            </Button>
          </div>
        );
      })}
      {asked !== null && newest === null && <p className={styles.quiet}>Offers are being worked out.</p>}
      {offers.length > 0 && (
        <ul className={styles.rows}>
          {offers.map(({ alternative, why, sums }) => {
            const name = alternativeName(alternative, jobs, formatter);
            const isChosen = order.alternatives.some((one) => isSame(one, alternative));
            return (
              <li key={name} className={styles.row}>
                <div className={styles.rowWords}>
                  <p>{name}</p>
                  <p className={styles.quiet}>{offerWords(why, sums.total, { currency, locale })}</p>
                </div>
                <Button
                  kind="quiet"
                  spoken={`Offer ${name}`}
                  blockedBy={isChosen ? 'It is offered.' : blockedBy}
                  onPress={() => add({ ...alternative, id: newId() }, name)}
                >
                  {isChosen ? 'Offered' : 'Offer it'}
                </Button>
              </li>
            );
          })}
        </ul>
      )}
      {jobs.map(({ jobId, job }) =>
        job.lines.map((line) => (
          <Button
            key={`${jobId} ${line.id}`}
            kind="quiet"
            blockedBy={blockedBy}
            onPress={() =>
              add(
                {
                  id: newId(),
                  kind: 'pieces',
                  ...{ jobId, lineId: line.id, size: null },
                  quantity: Math.max(
                    1,
                    line.quantities.reduce((sum, { quantity }) => sum + quantity, 1),
                  ),
                },
                line.name,
              )
            }
          >
            Another number of {line.name}
          </Button>
        )),
      )}
    </div>
  );
}

// Helpers

const quantityLimits = numberLimits(orderSchema, ['alternatives', 0, 'quantity']);

function isSame(one: Alternative, other: Omit<Alternative, 'id'>): boolean {
  const { id: _, ...bare } = one;
  return JSON.stringify(sorted(bare)) === JSON.stringify(sorted(other));
}

const sorted = (of: object) => Object.entries(of).toSorted(([one], [other]) => (one < other ? -1 : 1));
