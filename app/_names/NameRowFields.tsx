'use client';

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
  onChange: (part: Part, text: string, act: number) => void;
  onRemove: () => void;
}>;

/** One person: name, size and number, as they are printed and packed. */
export function NameRowFields({ row, at, sizes, isTwice, onChange, onRemove }: NameRowFieldsProps) {
  const who = row.name || `row ${at}`;
  const size = row.size.trim();
  const isNotMade = size !== '' && !sizes.includes(size);
  const field = (part: Part, label: string) => ({
    ...({ label, labelled: true, width: 'full', value: row[part] } as const),
    longest: textLimits(nameRowSchema, [part]).longest,
    onCommit: (text: string) => onChange(part, text, typing.act()),
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
      <Button kind="quiet" spoken={`Remove ${who}`} onPress={onRemove}>
        Remove
      </Button>
    </li>
  );
}
