'use client';

import Link from 'next/link';
import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { FindingRow } from '@/app/_controls/FindingRow';
import { Fold } from '@/app/_controls/Fold';
import { newId } from '@/app/_documents/newId';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { ItemOffer } from '@/app/_words/priceLists/offerWords';
import { offerLine, refusalWords } from '@/app/_words/priceLists/offerWords';
import { chargeChoices } from '@/app/_words/priceLists/paperWords';
import { mostEntries } from '@/shared/limits';
import { type PriceList, type PriceListItem, priceListSchema } from '@/shared/schemas/priceList';
import { ItemCharges } from './ItemCharges';
import styles from './PriceLists.module.css';

type DraftItemsProps = Readonly<{
  id: string;
  list: PriceList;
  offers: readonly ItemOffer[];
  workspace: ReadyWorkspace;
}>;

/** What the next version offers: lines of jobs, each with the charges that are named beside it. */
export function DraftItems({ id, list, offers, workspace }: DraftItemsProps) {
  const setItems = (
    label: string,
    to: (items: readonly PriceListItem[]) => readonly PriceListItem[],
    key?: string,
  ) => workspace.changePriceList(id, label, (now) => ({ ...now, items: [...to(now.items)] }), key);
  const falling = list.items.filter((_, index) => offers[index]?.kind === 'falls');
  return (
    <>
      <h3 className={styles.sub}>Items</h3>
      {list.items.length === 0 && <p className={styles.words}>None yet. Add lines of your jobs.</p>}
      <ul className={styles.items}>
        {list.items.map((item, index) => (
          <DraftItem
            key={item.id}
            item={item}
            offer={offers[index] ?? { kind: 'asked' }}
            workspace={workspace}
            onChange={(label, change, key) =>
              setItems(
                label,
                (items) => items.map((one) => (one.id === item.id ? { ...one, ...change } : one)),
                key === undefined ? undefined : `${item.id} ${key}`,
              )
            }
            onRemove={(name) =>
              setItems(`Take ${name} off the list`, (items) => items.filter((one) => one.id !== item.id))
            }
          />
        ))}
      </ul>
      {falling.length > 1 && (
        <Button onPress={() => capAll(workspace, falling)}>Sell all {falling.length} under a cap</Button>
      )}
      <AddItem
        list={list}
        workspace={workspace}
        onAdd={(item, name) => setItems(`Add ${name} to the list`, (items) => [...items, item])}
      />
    </>
  );
}

// Helpers

/** One step to undo, whichever jobs the items are of. */
function capAll({ edit }: ReadyWorkspace, items: readonly PriceListItem[]): void {
  const lines = (jobId: string) => items.filter((item) => item.jobId === jobId).map(({ lineId }) => lineId);
  edit(
    'Cap on the items of the list',
    [...new Set(items.map(({ jobId }) => jobId))].map((jobId) => ({
      do: 'change',
      kind: 'job',
      id: jobId,
      to: (job) => ({
        ...job,
        lines: job.lines.map((line) =>
          lines(jobId).includes(line.id) ? { ...line, selling: 'capped' } : line,
        ),
      }),
    })),
  );
}

type DraftItemProps = Readonly<{
  item: PriceListItem;
  offer: ItemOffer;
  workspace: ReadyWorkspace;
  onChange: (label: string, change: Partial<PriceListItem>, key?: string) => void;
  onRemove: (name: string) => void;
}>;

function DraftItem({ item, offer, workspace, onChange, onRemove }: DraftItemProps) {
  const job = workspace.jobs.find(({ id }) => id === item.jobId)?.job;
  const lineIndex = job?.lines.findIndex(({ id }) => id === item.lineId) ?? -1;
  const name = job?.lines[lineIndex]?.name ?? 'an item';
  const refusal = refusalWords(offer, name, workspace.workshop);
  const remedy =
    offer.kind === 'falls'
      ? {
          label: 'Sell it under a cap',
          onFix: () =>
            void workspace.setField(
              { kind: 'job', id: item.jobId },
              `Cap on ${name}`,
              ['lines', lineIndex, 'selling'],
              'capped',
            ),
        }
      : undefined;
  return (
    <li className={styles.item}>
      <div className={styles.itemHead}>
        <h4 className={styles.itemName}>{name}</h4>
        <span>
          {job !== undefined && <Link href={`/jobs/${item.jobId}`}>{job.name}</Link>}{' '}
          <Button kind="quiet" onPress={() => onRemove(name)}>
            Take off <span className="visuallyHidden">{name}</span>
          </Button>
        </span>
      </div>
      <div className={styles.offer}>
        {refusal === null ? (
          <p className={styles.quiet}>{offerLine(offer, workspace.workshop)}</p>
        ) : (
          <ul className={styles.findings}>
            <FindingRow severity="stop" {...refusal} fix={remedy} />
          </ul>
        )}
      </div>
      <Fold
        summary="Named beside it"
        line={
          item.charges
            .map((kind) => chargeChoices[kind])
            .join(', ')
            .toLocaleLowerCase() || 'nothing'
        }
      >
        <ItemCharges item={item} name={name} currency={workspace.workshop.currency} onChange={onChange} />
      </Fold>
    </li>
  );
}

type AddItemProps = Readonly<{
  list: PriceList;
  workspace: ReadyWorkspace;
  onAdd: (item: PriceListItem, name: string) => void;
}>;

function AddItem({ list, workspace, onAdd }: AddItemProps) {
  const choices = workspace.jobs.flatMap(({ id: jobId, job }) =>
    job.lines
      .filter(({ id }) => !list.items.some((item) => item.jobId === jobId && item.lineId === id))
      .map(({ id: lineId, name }) => ({
        value: JSON.stringify([jobId, lineId]),
        label: `${name} · ${job.name}`,
        jobId,
        lineId,
        name,
      })),
  );
  const [chosen, setChosen] = useState<string | null>(null);
  const choice = choices.find(({ value }) => value === chosen) ?? choices[0];
  if (choice === undefined) return <p className={styles.words}>Every line of your jobs is on the list.</p>;
  const last = list.items.at(-1);
  const most = mostEntries(priceListSchema, ['items']);
  return (
    <div className={styles.add}>
      <ChoiceField
        label="A line of a job"
        width="full"
        value={choice.value}
        choices={choices}
        onCommit={setChosen}
      />
      <Button
        blockedBy={list.items.length >= most ? `A list takes ${most} items.` : undefined}
        onPress={() =>
          onAdd(
            {
              id: newId(),
              jobId: choice.jobId,
              lineId: choice.lineId,
              charges: last?.charges ?? ['minimumOrder', 'name'],
              ownAmounts: last?.ownAmounts ?? [],
            },
            choice.name,
          )
        }
      >
        Add it
      </Button>
    </div>
  );
}
