'use client';

import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { PageHead } from '@/app/_controls/PageHead';
import { newId } from '@/app/_documents/newId';
import { EntryForm } from '@/app/_fields/EntryForm';
import { TextField } from '@/app/_fields/TextField';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { MakingLinks } from '@/app/_makingFrame/MakingLinks';
import { type OrderBook, useOrderBook } from '@/app/_orderBook/useOrderBook';
import { useRunBook } from '@/app/_runBook/useRunBook';
import { NotTaken } from '@/app/_supply/NotTaken';
import styles from '@/app/_supply/Supply.module.css';
import { useTaken } from '@/app/_supply/useTaken';
import { listLine, listNameTaken } from '@/app/_words/supply/listWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { freeName } from '@/lib/drafts/freeName';
import { mostEntries, textLimits } from '@/shared/limits';
import { buyingListSchema } from '@/shared/schemas/making/supply';
import { workChoices, worksOf } from './buyingWorks';
import { WorkChoices } from './WorkChoices';

/** Every buying list, and a new one. */
export function BuyingListsScreen() {
  return <WithWorkspace>{(workspace) => <BuyingLists workspace={workspace} />}</WithWorkspace>;
}

// Helpers

/** Lists, what went out of them, and what a list can be made for. */
const LIST_KINDS: ReadonlySet<string> = new Set(['buyingList', 'supplyOrder', 'run', 'order', 'job']);

function BuyingLists({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const book = useOrderBook(workspace);
  const [isNew, setNew] = useState(false);
  const locale = usableLocale(workspace.workshop.locale);
  const lists = Object.entries(workspace.buyingLists).toSorted(([, a], [, b]) =>
    a.name.localeCompare(b.name, locale, { numeric: true }),
  );
  const [open, away] = [
    lists.filter(([, { archivedOn }]) => archivedOn === null),
    lists.filter(([, { archivedOn }]) => archivedOn !== null),
  ];
  const rows = (some: typeof lists) => (
    <ul className={styles.list}>
      {some.map(([id, list]) => (
        <li key={id} className={styles.line}>
          <h2 className={styles.sub}>
            <Link href={`/making/buying/${id}`}>
              <bdi>{list.name}</bdi>
            </Link>
          </h2>
          <p className={styles.quiet}>
            {listLine(
              list,
              workspace.papers.supplyOrder.filter(
                ({ body, withdrawn }) => body.buyingListId === id && !withdrawn,
              ).length,
            )}
          </p>
        </li>
      ))}
    </ul>
  );
  return (
    <>
      <MakingLinks here="/making/buying" />
      <PageHead
        title="Buying"
        line="What is to be bought, from whom and by when."
        aside={
          <Button kind="strong" expanded={isNew} onPress={() => setNew(!isNew)}>
            New list
          </Button>
        }
      />
      <UnreadableRecords workspace={workspace} level={2} of={LIST_KINDS} />
      {isNew && <NewList {...{ workspace, book }} />}
      {open.length === 0 ? <p className={styles.none}>No list yet.</p> : rows(open)}
      {away.length > 0 && (
        <section aria-labelledby="put-away">
          <h2 className={styles.heading} id="put-away">
            Put away
          </h2>
          {rows(away)}
        </section>
      )}
    </>
  );
}

function NewList({ workspace, book }: Readonly<{ workspace: ReadyWorkspace; book: OrderBook }>) {
  const router = useRouter();
  const { runs } = useRunBook(workspace);
  const choices = workChoices(workspace, book, runs);
  const [chosen, setChosen] = useState<readonly string[]>(() =>
    choices.flatMap(({ key, kind }) => (kind === 'order' ? [key] : [])),
  );
  const [typed, setName] = useState<string | null>(null);
  const { problem, taken } = useTaken();
  const picked = choices.filter(({ key }) => chosen.includes(key));
  const longest = textLimits(buyingListSchema, ['name']).longest;
  const names = Object.values(workspace.buyingLists).map((list) => list.name);
  const offered = picked
    .map((one) => one.name)
    .join(', ')
    .slice(0, longest);
  const name = (typed ?? (offered === '' ? '' : freeName(offered, names))).trim();
  const works = worksOf(picked);
  const most = mostEntries(buyingListSchema, ['works']);
  const missing =
    works.length === 0
      ? 'What it is for comes first.'
      : works.length > most
        ? `A list holds ${most} jobs at most: choose fewer, and make a second list.`
        : name === ''
          ? 'The name is missing.'
          : undefined;
  const add = () => {
    const id = newId();
    const body = buyingListSchema.parse({ name, works });
    if (taken(workspace.edit(name, [{ do: 'add', kind: 'buyingList', id, body }])))
      router.push(`/making/buying/${id}`);
  };
  return (
    <div className={styles.framed}>
      <EntryForm label="New list" className={styles.form} missing={missing} onEnter={add}>
        <WorkChoices
          {...{ choices, chosen }}
          onToggle={(key, isOn) =>
            setChosen((now) => (isOn ? [...now, key] : now.filter((one) => one !== key)))
          }
        />
        <TextField
          label="Name of the list"
          value={name}
          caution={names.includes(name) ? listNameTaken(freeName(name, names)) : undefined}
          {...textLimits(buyingListSchema, ['name'])}
          onCommit={setName}
        />
        <div className={styles.acts}>
          <Button type="submit" kind="strong" blockedBy={missing}>
            Make the list
          </Button>
          <NotTaken problem={problem} />
        </div>
      </EntryForm>
    </div>
  );
}
