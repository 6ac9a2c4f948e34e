'use client';

import { memo } from 'react';
import { Button } from '@/app/_controls/Button';
import { typing } from '@/app/_documents/typing';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { TextField } from '@/app/_fields/TextField';
import { sizeNotMadeWords, TWICE } from '@/app/_words/names/intakeWords';
import { textLimits } from '@/shared/limits';
import { type NameRow, nameRowSchema } from '@/shared/schemas/order';
import styles from './Names.module.css';

type Part = 'name' | 'size' | 'number';

type NameRowFieldsProps = Readonly<{
  row: NameRow;
  /** Its place in the list as it is shown, from 1. */
  at: number;
  sizes: readonly string[];
  isTwice: boolean;
  /** `act` tells one act of typing from the next. */
  onChange: (id: string, part: Part, text: string, act: number) => void;
  onRemove: (row: NameRow) => void;
}>;

/** One person: name, size and number, as they are printed and packed. Drawn anew only where something of it changed. */
export const NameRowFields = memo(function NameRowFields(props: NameRowFieldsProps) {
  const { row, at, sizes, isTwice, onChange, onRemove } = props;
  const who = row.name || `row ${at}`;
  const size = row.size.trim();
  const isNotMade = size !== '' && !sizes.includes(size);
  const field = (part: Part, label: string) => ({
    ...({ label, labelled: true, width: 'full', value: row[part] } as const),
    longest: textLimits(nameRowSchema, [part]).longest,
    onCommit: (text: string) => onChange(row.id, part, text, typing.act()),
  });
  return (
    <li className={styles.row}>
      <TextField
        {...field('name', `Name in row ${at}`)}
        id={`name-${row.id}`}
        isTrimmed={false}
        caution={isTwice ? TWICE : undefined}
      />
      {sizes.length === 0 ? (
        <TextField {...field('size', `Size of ${who}`)} isTrimmed={false} />
      ) : (
        <ChoiceField
          {...field('size', `Size of ${who}`)}
          value={size}
          choices={[
            { value: '', label: 'no size' },
            ...sizes.map((one) => ({ value: one, label: one })),
            ...(isNotMade ? [{ value: size, label: `“${size}”` }] : []),
          ]}
          caution={isNotMade ? sizeNotMadeWords(size) : undefined}
        />
      )}
      <TextField {...field('number', `Number of ${who}`)} isTrimmed={false} />
      <Button kind="quiet" spoken={`Remove ${who}`} onPress={() => onRemove(row)}>
        Remove
      </Button>
    </li>
  );
});
