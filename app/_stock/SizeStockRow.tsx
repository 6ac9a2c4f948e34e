'use client';

import { useId, useState } from 'react';
import { dayOf } from '@/app/_clock/dayOf';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { entryWords, stockLine, stockNotes } from '@/app/_words/workshop/stockWords';
import { stockOf } from '@/lib/stock/stockOf';
import { NoteForm } from './NoteForm';
import styles from './Stock.module.css';
import { type StockDraft, stockEntryOf } from './stockDraft';

type SizeStockRowProps = Readonly<{ workspace: ReadyWorkspace; blankId: string; size: string }>;

/** What lies where of one size, and the way to note what happened to it. */
export function SizeStockRow({ workspace, blankId, size }: SizeStockRowProps) {
  const [isOpen, setOpen] = useState(false);
  const words = useId();
  const { piles, workshop } = workspace;
  const { currency, locale } = workshop;
  const formatter = formatterFor(workshop);
  const stock = stockOf(piles, blankId, size);
  const { wrong, more } = stockNotes(stock, formatter, (at) => dayOf(new Date(at)));
  const shops = [...new Set(piles.flatMap(({ place }) => (place.kind === 'shop' ? [place.name] : [])))];
  const note = (draft: StockDraft & { readonly quantity: number }) => {
    const entry = stockEntryOf(draft, { blankId, size, currency });
    const said = entryWords(entry, formatter, locale).words;
    if (workspace.note(`${size}: ${said}`, [entry]).state !== 'shown') return;
    focusById(words);
    setOpen(false);
  };
  return (
    <li className={styles.size}>
      <div className={styles.head}>
        <span className={styles.name}>{size}</span>
        <span className={styles.words} id={words} tabIndex={-1} role="status">
          {stockLine(stock, formatter)}
          {wrong.map((text) => (
            <em className={styles.wrong} key={text}>
              {text}
            </em>
          ))}
          {more.map((text) => (
            <span className={styles.more} key={text}>
              {text}
            </span>
          ))}
        </span>
        <Button
          kind={isOpen ? 'quiet' : 'plain'}
          expanded={isOpen}
          spoken={isOpen ? `Close the note for ${size}` : `Count or note ${size}`}
          onPress={() => setOpen(!isOpen)}
        >
          {isOpen ? 'Close' : 'Count or note'}
        </Button>
      </div>
      {isOpen && (
        <NoteForm
          {...{ size, shops, currency, formatter }}
          piles={stock.ready === null ? stock.others : [stock.ready, ...stock.others]}
          onNote={note}
        />
      )}
    </li>
  );
}
