'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { TextField } from '@/app/_fields/TextField';
import { askedCountedWords } from '@/app/_words/stall/count/moreWords';
import { goodsKey } from '@/lib/stall/goodsKey';
import { textLimits } from '@/shared/limits';
import { stallTapSchema } from '@/shared/schemas/stallEvents';
import type { TileRow } from '../tileRows';
import type { Counting } from '../useCount';
import styles from './Panel.module.css';

type AskedPanelProps = Readonly<{ counting: Counting; rows: readonly TileRow[] }>;

/** What somebody wanted and did not get: goods that are gone, and in words what there never was. */
export function AskedPanel({ counting, rows }: AskedPanelProps) {
  const { count, tap } = counting;
  const [words, setWords] = useState('');
  const [counted, setCounted] = useState<string | null>(null);
  const left = new Map(count.goods.map((one) => [goodsKey(one), one]));
  const gone = rows.flatMap(({ tiles }) =>
    tiles.filter(({ key, isPlanned }) => isPlanned && (left.get(key)?.left ?? 0) <= 0),
  );
  const timesOf = (said: string) =>
    count.askedFor.find((one) => one.words.toLowerCase() === said.toLowerCase())?.count ?? 0;
  const ask = (said: string) => tap({ what: 'asked', goods: null, words: said });
  return (
    <>
      {gone.length > 0 && (
        <section aria-label="Gone" className={styles.part}>
          <h3>Gone</h3>
          <div className={styles.keys}>
            {gone.map(({ key, name, goods: { jobId, lineId, size } }) => (
              <Button
                key={key}
                onPress={() => tap({ what: 'asked', goods: { jobId, lineId, size }, words: '' })}
              >
                {name}
                <Times count={left.get(key)?.asked ?? 0} />
              </Button>
            ))}
          </div>
        </section>
      )}
      <section aria-label="Never there" className={styles.part}>
        <h3>Never there</h3>
        {count.askedFor.length > 0 && (
          <div className={styles.keys}>
            {count.askedFor.map((one) => (
              <Button key={one.words} onPress={() => ask(one.words)}>
                {one.words || 'something else'}
                <Times count={one.count} />
              </Button>
            ))}
          </div>
        )}
        <TextField
          label="What was it"
          value={words}
          onCommit={setWords}
          width="full"
          hint="As “youth sizes”; may stay empty."
          {...textLimits(stallTapSchema, ['tap', 'words'])}
        />
        <Button
          kind="strong"
          onPress={() => {
            if (!ask(words.trim())) return;
            setCounted(words.trim());
            setWords('');
          }}
        >
          Count it
        </Button>
        <p role="status">{counted !== null && askedCountedWords(counted, timesOf(counted))}</p>
      </section>
    </>
  );
}

// Helpers

const Times = ({ count }: Readonly<{ count: number }>) => (count > 0 ? ` · ${count}` : null);
