'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { TextField } from '@/app/_fields/TextField';
import { textLimits } from '@/shared/limits';
import { stallTapSchema } from '@/shared/schemas/stallEvents';
import type { Counting } from '../useCount';
import styles from './Panel.module.css';

/** A short note, or what somebody wants made. */
export function WordsPart({ counting: { count, tap } }: Readonly<{ counting: Counting }>) {
  const [words, setWords] = useState('');
  const said = words.trim();
  const missing = said === '' ? 'The words come first.' : undefined;
  const enter = (what: 'note' | 'lead') => {
    if (said !== '' && tap({ what, words: said })) setWords('');
  };
  const told = [...count.notes, ...count.leads].filter((one) => one.words !== '');
  return (
    <Fold summary="In words" line={told.length > 0 ? `${told.length} so far` : 'a note, or what is wanted'}>
      <div className={styles.part}>
        <TextField
          label="Words"
          value={words}
          onCommit={setWords}
          width="full"
          {...textLimits(stallTapSchema, ['tap', 'words'])}
        />
        <div className={styles.keys}>
          <Button blockedBy={missing} onPress={() => enter('note')}>
            Note it
          </Button>
          <Button blockedBy={missing} onPress={() => enter('lead')}>
            Somebody wants it made
          </Button>
        </div>
        {told.length > 0 && (
          <ul>
            {told.map((one) => (
              <li key={one.id}>{one.words}</li>
            ))}
          </ul>
        )}
      </div>
    </Fold>
  );
}
