'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { AmountField } from '@/app/_fields/AmountField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { PickRow } from '@/app/_fields/PickRow';
import { TextField } from '@/app/_fields/TextField';
import { shortAmount } from '@/app/_words/stall/count/countWords';
import { spentOnHint, tinWords } from '@/app/_words/stall/count/tapWords';
import { numberLimits, textLimits } from '@/shared/limits';
import { toMinor } from '@/shared/money';
import { stallTapSchema } from '@/shared/schemas/stallEvents';
import type { Counting } from '../useCount';
import styles from './Panel.module.css';

const causes = ['skimmed', 'added', 'spent'] as const;

/** Money that goes into the tin or out of it beside sales. */
export function TinPart({ counting: { plan, count, locale, tap } }: Readonly<{ counting: Counting }>) {
  const [amount, setAmount] = useState<number | null>(null);
  const [cause, setCause] = useState<(typeof causes)[number] | ''>('');
  const [words, setWords] = useState('');
  const { currency } = plan;
  const moved = `${shortAmount(count.tinMinor, currency, locale)} ${currency}`;
  const missing =
    amount === null ? 'How much comes first.' : cause === '' ? 'In or out comes first.' : undefined;
  const enter = () => {
    if (amount === null || cause === '') return;
    const on = cause === 'spent' ? words.trim() : '';
    if (!tap({ what: 'tin', cause, minor: toMinor(amount, currency), words: on })) return;
    setAmount(null);
    setCause('');
    setWords('');
  };
  return (
    <Fold
      summary="Tin"
      line={count.tinMinor === 0 ? 'money in or out beside sales' : `${moved} beside sales`}
    >
      <EntryForm label="Tin" className={styles.part} missing={missing} onEnter={enter}>
        <AmountField
          label="How much"
          currency={currency}
          value={amount}
          onCommit={setAmount}
          minorLimits={numberLimits(stallTapSchema, ['tap', 'minor'])}
        />
        <PickRow<(typeof causes)[number] | ''>
          label="In or out"
          value={cause}
          choices={causes.map((value) => ({ value, label: tinWords[value] }))}
          onPick={setCause}
        />
        {cause === 'spent' && (
          <TextField
            label="What on"
            value={words}
            onCommit={setWords}
            width="full"
            hint={spentOnHint}
            {...textLimits(stallTapSchema, ['tap', 'words'])}
          />
        )}
        <div className={styles.keys}>
          <Button type="submit" blockedBy={missing}>
            Into the count
          </Button>
        </div>
      </EntryForm>
    </Fold>
  );
}
