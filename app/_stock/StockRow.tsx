'use client';

import { useId, useState } from 'react';
import { dayOf } from '@/app/_clock/dayOf';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { formMemory } from '@/app/_fields/formMemory';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { entryWords, stockLine, stockNotes } from '@/app/_words/workshop/stockWords';
import { stockOf } from '@/lib/stock/stockOf';
import type { StockItem } from '@/shared/schemas/stock';
import { NoteForm } from './NoteForm';
import styles from './Stock.module.css';
import { type StockDraft, stockEntryOf } from './stockDraft';
import { isNoteBegun, stockForm } from './stockForms';

/** A thing in stock, as a row of it is drawn. */
export interface StockThing {
  /** Without a lot. */
  readonly item: StockItem;
  /** As its row calls it: a size where the blank stands above it. */
  readonly name: string;
  /** What it is counted in; empty for pieces. */
  readonly unit: string;
  /** What is to be done about it, said beside where it lies. */
  readonly wrong?: readonly string[];
  /** What else is known of it. */
  readonly more?: readonly string[];
}

type StockRowProps = Readonly<{ workspace: ReadyWorkspace; thing: StockThing }>;

/** What lies where of one thing, and the way to note what happened to it. */
export function StockRow({ workspace, thing }: StockRowProps) {
  const [isOpen, setOpen] = useState(() => isNoteBegun(thing.item));
  const [problem, setProblem] = useState<string | null>(null);
  const words = useId();
  const { item, name, unit } = thing;
  const { piles, workshop } = workspace;
  const { currency, locale } = workshop;
  const formatter = formatterFor(workshop);
  const stock = stockOf(piles, item);
  const { wrong, more } = stockNotes(stock, formatter, (at) => dayOf(new Date(at)));
  const shops = [...new Set(piles.flatMap(({ place }) => (place.kind === 'shop' ? [place.name] : [])))];
  const close = () => {
    formMemory.forget(stockForm(item));
    setOpen(false);
  };
  const note = (draft: StockDraft & { readonly quantity: number }) => {
    const entry = stockEntryOf(draft, { item, currency });
    const said = entryWords(entry, formatter, locale, unit).words;
    const { state } = workspace.note(`${name}: ${said}`, [entry]);
    setProblem(state === 'shown' ? null : notNotedWords(state));
    if (state !== 'shown') return;
    focusById(words);
    close();
  };
  return (
    <li className={styles.size}>
      <div className={styles.head}>
        <span className={styles.name}>{name}</span>
        <span className={styles.words} id={words} tabIndex={-1} role="status">
          {stockLine(stock, formatter, unit)}
          {[...wrong, ...(thing.wrong ?? [])].map((text) => (
            <em className={styles.wrong} key={text}>
              {text}
            </em>
          ))}
          {[...more, ...(thing.more ?? [])].map((text) => (
            <span className={styles.more} key={text}>
              {text}
            </span>
          ))}
        </span>
        <Button
          kind={isOpen ? 'quiet' : 'plain'}
          expanded={isOpen}
          spoken={isOpen ? `Close the note for ${name}` : `Count or note ${name}`}
          onPress={() => (isOpen ? close() : setOpen(true))}
        >
          {isOpen ? 'Close' : 'Count or note'}
        </Button>
      </div>
      {isOpen && (
        <NoteForm
          {...{ item, name, unit, shops, currency, formatter }}
          piles={stock.ready === null ? stock.others : [stock.ready, ...stock.others]}
          problem={problem}
          onNote={note}
        />
      )}
    </li>
  );
}
