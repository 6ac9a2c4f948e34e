'use client';

import { useState } from 'react';
import { formMemory, type OrderForm } from '@/app/_fields/formMemory';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { EditOutcome } from '@/app/_store/documentsState';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { stepWords } from '@/app/_words/orders/notes/orderStepWords';
import type { EntryBodies } from '@/lib/kinds/entryKinds';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import type { NewEntry } from '@/lib/stored/newEntries';
import type { Edit } from '@/lib/stored/prepareEdit';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { OrderStep } from '@/shared/schemas/orderEvents';

export type Noted = readonly NewEntry<EntryBodies>[];

export const takingBack = (ids: readonly string[]): Noted =>
  ids.map((entryId) => ({ kind: 'takeBack', body: { entryId } }));

/**
 * Notes what happened to an order, or to the workshop where none is named; what was not taken is told, and the form stays as it was typed.
 *
 * @param form what is typed in it is forgotten once it is noted
 */
export function useNoting(
  { workspace, orderId }: Pick<OrderOnScreen, 'workspace'> & { readonly orderId?: string },
  form?: OrderForm,
) {
  const [problem, setProblem] = useState<string | null>(null);
  const settled = (outcome: EditOutcome): boolean => {
    const isShown = outcome.state === 'shown';
    if (isShown && form !== undefined) formMemory.forget(form);
    setProblem(isShown ? null : notNotedWords(outcome.state));
    return isShown;
  };
  const note = (
    label: string,
    entries: Noted,
    files: readonly StoredFile[] = [],
    edits: readonly Edit<DocumentBodies>[] = [],
  ): boolean => settled(workspace.note(label, entries, edits, files));
  /** @returns whether it was taken */
  const noteSteps = (
    day: string,
    steps: readonly OrderStep[],
    files: readonly StoredFile[] = [],
    edits: readonly Edit<DocumentBodies>[] = [],
  ): boolean => {
    const [first] = steps;
    if (first === undefined || orderId === undefined) return false;
    return note(
      stepWords[first.what],
      steps.map((step) => ({ kind: 'orderEvent', body: { orderId, day, step } })),
      files,
      edits,
    );
  };
  return { problem, note, noteSteps };
}
