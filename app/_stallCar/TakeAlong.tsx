'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { CheckField } from '@/app/_fields/CheckField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { TextField } from '@/app/_fields/TextField';
import { carWords } from '@/app/_words/stall/carWords';
import { usualThings } from '@/app/_words/stall/usualThings';
import { mostEntries, textLimits } from '@/shared/limits';
import { type StallDay, stallDaySchema } from '@/shared/schemas/stallDay';
import styles from './Car.module.css';
import type { StallPart } from './carOnScreen';

const most = mostEntries(stallDaySchema, ['takeAlong']);

/** What else goes along, ticked off as it is packed. */
export function TakeAlong({ part }: Readonly<{ part: StallPart }>) {
  const { workspace, id, stallDay } = part;
  const [what, setWhat] = useState('');
  const { takeAlong } = stallDay;
  const set = (label: string, to: StallDay['takeAlong']) =>
    workspace.setField({ kind: 'stallDay', id }, label, ['takeAlong'], to);
  const missing =
    what.trim() === ''
      ? 'What it is comes first.'
      : takeAlong.length >= most
        ? `${most} things are the most there can be.`
        : undefined;
  const add = () => {
    typing.ends();
    set(`Take along ${what}`, [...takeAlong, { id: newId(), what: what.trim(), isPacked: false }]);
    setWhat('');
  };
  const addUsual = () => {
    typing.ends();
    set(
      carWords.addUsual,
      usualThings.map((thing) => ({ id: newId(), what: thing, isPacked: false })),
    );
  };
  return (
    <div className={styles.rows}>
      <ul className={styles.things} aria-label="Take along">
        {takeAlong.map((thing) => (
          <li key={thing.id} className={styles.thing}>
            <CheckField
              label={thing.what}
              checked={thing.isPacked}
              onCommit={(isPacked) =>
                set(
                  thing.what,
                  takeAlong.map((one) => (one.id === thing.id ? { ...one, isPacked } : one)),
                )
              }
            />
            <Button
              kind="quiet"
              spoken={`Remove ${thing.what}`}
              onPress={() => {
                typing.ends();
                set(
                  `Remove ${thing.what}`,
                  takeAlong.filter((one) => one.id !== thing.id),
                );
              }}
            >
              Remove
            </Button>
          </li>
        ))}
      </ul>
      {takeAlong.length === 0 && (
        <div>
          <Button onPress={addUsual}>{carWords.addUsual}</Button>
        </div>
      )}
      <EntryForm label={carWords.addThing} className={styles.adding} missing={missing} onEnter={add}>
        <TextField
          label="A further thing"
          value={what}
          {...textLimits(stallDaySchema, ['takeAlong', 0, 'what'])}
          onCommit={setWhat}
        />
        <Button type="submit" blockedBy={missing}>
          {carWords.addThing}
        </Button>
      </EntryForm>
    </div>
  );
}
