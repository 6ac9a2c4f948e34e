'use client';

import { useEffect, useId, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { focusById } from '@/app/_controls/focusById';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import type { Formatter } from '@/app/_words/formatter';
import { actWords, countHint, gradeWords } from '@/app/_words/workshop/stockWords';
import type { Pile } from '@/lib/stock/foldStock';
import { type NumberLimits, numberLimits, textLimits } from '@/shared/limits';
import { LARGEST_AMOUNT } from '@/shared/money';
import {
  blanksNotedSchema,
  type StockGrade,
  stockCountSchema,
  stockGrades,
  stockMoveSchema,
} from '@/shared/schemas/stock';
import { PlaceField } from './PlaceField';
import styles from './Stock.module.css';
import { freshDraft, type StockAct, type StockDraft, samePlace, stockActs, stockMissing } from './stockDraft';

type NoteFormProps = Readonly<{
  size: string;
  /** Where pieces of the size lie. */
  piles: readonly Pile[];
  shops: readonly string[];
  currency: string;
  formatter: Formatter;
  /** What is typed stays until it is noted. */
  onNote: (draft: StockDraft & { readonly quantity: number }) => void;
}>;

/** What one cost is kept in minor units and typed in whole ones: what can be asked at all fits in. */
const costLimits: NumberLimits = {
  min: numberLimits(stockMoveSchema, ['unitCost', 'minor']).min ?? 0,
  max: LARGEST_AMOUNT,
};

const grades = stockGrades.map((value) => ({ value, label: gradeWords[value] }));

/** What happened to the blanks of one size: how many, and why; everything else is folded away. */
export function NoteForm({ size, piles, shops, currency, formatter, onNote }: NoteFormProps) {
  const [draft, setDraft] = useState(freshDraft);
  /** Noted without a figure: the field says that it wants one. */
  const [isAsked, setAsked] = useState(false);
  const many = useId();
  // Opened to be typed in.
  useEffect(() => focusById(many), [many]);
  const set = (change: Partial<StockDraft>) => setDraft((now) => ({ ...now, ...change }));
  const { act, quantity, place, grade, lot } = draft;
  const here = piles.find((pile) => pile.grade === grade && samePlace(pile.place, place)) ?? null;
  const missing = stockMissing(draft);
  const { hint, caution } = countHint({ act, quantity, lot: lot.trim() || null, pile: here }, formatter);
  return (
    <EntryForm
      className={styles.form}
      label={`Note for ${size}`}
      missing={quantity === null ? undefined : missing}
      onEnter={() => {
        if (quantity !== null) return onNote({ ...draft, quantity });
        setAsked(true);
        focusById(many);
      }}
    >
      <FieldGroup pairs>
        <ChoiceField<StockAct>
          label="What happened"
          width="narrow"
          value={act}
          choices={stockActs.map((value) => ({ value, label: actWords[value] }))}
          onCommit={(value) => set({ act: value })}
        />
        <NumberField
          label="How many"
          id={many}
          width="narrow"
          value={quantity}
          {...numberLimits(blanksNotedSchema, [])}
          hint={hint}
          caution={quantity === null && isAsked ? missing : caution}
          onCommit={(value) => set({ quantity: value })}
        />
        {act === 'moved' && (
          <>
            <PlaceField label="To" place={draft.to} shops={shops} onPick={(to) => set({ to })} />
            <ChoiceField<StockGrade>
              label="There as"
              width="narrow"
              value={draft.toGrade}
              choices={grades}
              onCommit={(toGrade) => set({ toGrade })}
            />
          </>
        )}
      </FieldGroup>
      <Button type="submit" kind="strong" blockedBy={quantity === null ? undefined : missing}>
        Note it
      </Button>
      <Fold
        summary="Place, grade, lot"
        line={act === 'bought' ? 'and what one cost' : 'home, first grade, no lot named'}
      >
        <FieldGroup pairs>
          <PlaceField
            label={act === 'moved' ? 'From' : 'Place'}
            place={place}
            shops={shops}
            onPick={(next) => set({ place: next })}
          />
          <ChoiceField<StockGrade>
            label="Grade"
            width="narrow"
            value={grade}
            choices={grades}
            onCommit={(value) => set({ grade: value })}
          />
          <TextField
            label="Lot"
            width="narrow"
            value={lot}
            {...textLimits(stockCountSchema, ['item', 'lot'])}
            hint={act === 'counted' ? 'Empty counts all lots together.' : 'May stay empty.'}
            onCommit={(value) => set({ lot: value })}
          />
          {act === 'bought' && (
            <NumberField
              label="One cost"
              unit={currency}
              width="narrow"
              value={draft.price}
              {...costLimits}
              hint="Empty where you do not know."
              onCommit={(price) => set({ price })}
            />
          )}
        </FieldGroup>
      </Fold>
    </EntryForm>
  );
}
