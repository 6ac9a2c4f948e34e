'use client';

import { useEffect, useId, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { focusById } from '@/app/_controls/focusById';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { halfTyped } from '@/app/_fields/formMemory';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { useTyped } from '@/app/_fields/useTyped';
import type { Formatter } from '@/app/_words/formatter';
import { actWords, countHint, gradeWords, noteWords } from '@/app/_words/workshop/stockWords';
import type { Pile } from '@/lib/stock/foldStock';
import { type NumberLimits, numberLimits, textLimits } from '@/shared/limits';
import { LARGEST_AMOUNT } from '@/shared/money';
import {
  blanksNotedSchema,
  type StockGrade,
  type StockItem,
  stockCountSchema,
  stockGrades,
  stockMoveSchema,
} from '@/shared/schemas/stock';
import { PlaceField } from './PlaceField';
import styles from './Stock.module.css';
import {
  actsOf,
  freshDraft,
  hasPrice,
  isOfPieces,
  type StockAct,
  type StockDraft,
  samePlace,
  stockDraftSchema,
  stockMissing,
} from './stockDraft';
import { isNoteBegun, stockForm } from './stockForms';

type NoteFormProps = Readonly<{
  item: StockItem;
  name: string;
  /** What it is counted in; empty for pieces. */
  unit: string;
  /** Where it lies. */
  piles: readonly Pile[];
  shops: readonly string[];
  currency: string;
  formatter: Formatter;
  /** Why it was not noted; null where nothing was refused. */
  problem: string | null;
  /** What is typed stays until it is noted. */
  onNote: (draft: StockDraft & { readonly quantity: number }) => void;
}>;

/** What one cost is kept in minor units and typed in whole ones: what can be asked at all fits in. */
const costLimits: NumberLimits = {
  min: numberLimits(stockMoveSchema, ['unitCost', 'minor']).min ?? 0,
  max: LARGEST_AMOUNT,
};

const pieceLimits = numberLimits(blanksNotedSchema, []);
/** Paper, ink and consumables are not noted whole. */
const amountLimits = numberLimits(stockCountSchema, ['quantity']);

const grades = stockGrades.map((value) => ({ value, label: gradeWords[value] }));

/** What happened to one thing in stock: how many, and why; everything else is folded away. */
export function NoteForm(props: NoteFormProps) {
  const { item, name, unit, piles, shops, currency, formatter, problem, onNote } = props;
  const form = stockForm(item);
  const [draft, setDraft] = useTyped(form, 'draft', stockDraftSchema, freshDraft);
  const [isFound] = useState(() => isNoteBegun(item));
  /** Noted without a figure: the field says that it wants one. */
  const [isAsked, setAsked] = useState(false);
  const many = useId();
  // Opened to be typed in; a reload takes the hand nowhere.
  useEffect(() => {
    if (!isFound) focusById(many);
  }, [many, isFound]);
  const set = (change: Partial<StockDraft>) => setDraft({ ...draft, ...change });
  const { act, quantity, place, grade, lot } = draft;
  const asked = act === 'second' ? 'first' : grade;
  const here = piles.find((pile) => pile.grade === asked && samePlace(pile.place, place)) ?? null;
  const missing = stockMissing(draft);
  const isPieces = isOfPieces(item);
  const isPriced = hasPrice(act, here === null);
  const { hint, caution } = countHint({ act, quantity, lot: lot.trim() || null, pile: here }, formatter);
  return (
    <EntryForm
      className={styles.form}
      label={`Note for ${name}`}
      missing={quantity === null ? undefined : missing}
      onEnter={() => {
        if (quantity !== null) return onNote({ ...draft, quantity, price: isPriced ? draft.price : null });
        setAsked(true);
        focusById(many);
      }}
    >
      <FieldGroup pairs>
        <ChoiceField<StockAct>
          label="What happened"
          width="narrow"
          value={act}
          choices={actsOf(item).map((value) => ({ value, label: actWords[value] }))}
          onCommit={(value) => set({ act: value })}
        />
        <NumberField
          label={isPieces ? noteWords.howMany : noteWords.howMuch}
          id={many}
          unit={unit === '' ? undefined : unit}
          width="narrow"
          value={quantity}
          half={halfTyped(form, 'quantity')}
          {...(isPieces ? pieceLimits : amountLimits)}
          hint={hint}
          caution={quantity === null && isAsked ? missing : caution}
          onCommit={(value) => set({ quantity: value })}
        />
        {act === 'moved' && (
          <>
            <PlaceField label="To" place={draft.to} shops={shops} onPick={(to) => set({ to })} />
            {isPieces && (
              <ChoiceField<StockGrade>
                label="There as"
                width="narrow"
                value={draft.toGrade}
                choices={grades}
                onCommit={(toGrade) => set({ toGrade })}
              />
            )}
          </>
        )}
      </FieldGroup>
      <Button type="submit" kind="strong" blockedBy={quantity === null ? undefined : missing}>
        Note it
      </Button>
      {problem !== null && (
        <p role="alert" className={styles.wrong}>
          {problem}
        </p>
      )}
      <Fold
        summary={noteWords.rest(item.kind)}
        line={isPriced ? noteWords.andPrice(isPieces) : noteWords.restAsUsual(item.kind)}
      >
        <FieldGroup pairs>
          <PlaceField
            label={act === 'moved' ? 'From' : 'Place'}
            place={place}
            shops={shops}
            onPick={(next) => set({ place: next })}
          />
          {isPieces && act !== 'second' && (
            <ChoiceField<StockGrade>
              label="Grade"
              width="narrow"
              value={grade}
              choices={grades}
              onCommit={(value) => set({ grade: value })}
            />
          )}
          {item.kind === 'blank' && (
            <TextField
              label="Lot"
              width="narrow"
              value={lot}
              {...textLimits(stockCountSchema, ['item', 'lot'])}
              hint={act === 'counted' ? 'Empty counts all lots together.' : 'May stay empty.'}
              onCommit={(value) => set({ lot: value })}
            />
          )}
          {isPriced && (
            <NumberField
              label={isPieces ? noteWords.oneCost : noteWords.allCost}
              unit={currency}
              width="narrow"
              value={draft.price}
              half={halfTyped(form, 'price')}
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
