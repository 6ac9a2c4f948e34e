'use client';

import { type RefObject, useCallback, useRef, useState } from 'react';
import type { SaveFailure } from '@/app/_backend/saveFailure';
import type { CopyActions, CopyLook } from '@/app/_store/copies/copyActions';
import type { ReplaceOutcome } from '@/app/_store/documentsState';
import { arrivalLabel } from '@/app/_words/store/arrivalLabels';
import type { ArrivalPlan, Choice } from '@/lib/copies/arrival';
import type { Choices } from '@/lib/copies/arrivalGroups';
import type { NotACopy } from '@/lib/copies/copy';
import type { CopySaved } from './useMakingCopy';

type Looked = Extract<CopyLook, { readonly state: 'copy' }>;

/** What was taken in. */
interface Told {
  readonly kind: 'told';
  readonly mode: 'beside' | 'replace';
  readonly plan: ArrivalPlan;
  readonly chosen: Choices;
  /** Of this device from now on; null where it keeps its own. */
  readonly newLetter: string | null;
  /** Of the step that undo would take back. */
  readonly label: string;
}

type ArrivingState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'several'; readonly count: number }
  | { readonly kind: 'looking'; readonly name: string }
  | { readonly kind: 'notACopy'; readonly name: string; readonly why: NotACopy }
  | {
      readonly kind: 'looked';
      readonly name: string;
      readonly look: Looked;
      readonly chosen: Choices;
      /** Why it could not be taken just now; null before it was tried. */
      readonly problem: SaveFailure | null;
      /** Why the copy of what is here does not do; from then on it makes way only where the maker says so again. */
      readonly unsaved: Exclude<CopySaved, 'whole'> | null;
    }
  | { readonly kind: 'taking'; readonly name: string; readonly look: Looked; readonly chosen: Choices }
  | Told;

/** What bringing a file in needs of the documents. */
export interface ArrivalStore extends Pick<CopyActions, 'lookAtCopy' | 'takeCopy'> {
  readonly undoLabel: string | null;
  readonly undo: () => Promise<unknown>;
  /** Saves a copy of what is here; before all of it makes way for another. */
  readonly saveFirst: () => Promise<CopySaved>;
}

export interface Arriving {
  readonly state: ArrivingState;
  /** The button that chooses a file: it has the focus again when what came of one is put away. */
  readonly chooser: RefObject<HTMLButtonElement | null>;
  readonly look: (files: readonly File[]) => void;
  readonly choose: (id: string, choice: Choice) => void;
  readonly take: (mode: 'beside' | 'replace') => void;
  readonly leave: () => void;
  /** Takes back what was brought in; null where undo would take back something else by now. */
  readonly undo: (() => void) | null;
}

/** A file on its way in: chosen, looked at, decided on, taken. */
export function useArriving(store: ArrivalStore): Arriving {
  const [state, setState] = useState<ArrivingState>({ kind: 'idle' });
  /** The file chosen last: what is read of an earlier one comes too late. */
  const turn = useRef(0);
  const chooser = useRef<HTMLButtonElement>(null);
  const putAway = () => {
    setState({ kind: 'idle' });
    chooser.current?.focus();
  };
  const look = useCallback(
    async (files: readonly File[]) => {
      const [file, ...more] = files;
      if (file === undefined) return;
      turn.current += 1;
      const mine = turn.current;
      if (more.length > 0) return setState({ kind: 'several', count: files.length });
      const { name } = file;
      setState({ kind: 'looking', name });
      const found = await lookedAt(store, file);
      if (turn.current !== mine) return;
      setState(
        found.state === 'copy'
          ? { kind: 'looked', name, look: found, chosen: {}, problem: null, unsaved: null }
          : { kind: 'notACopy', name, why: found.why },
      );
    },
    [store],
  );
  const take = async (mode: 'beside' | 'replace') => {
    if (state.kind !== 'looked') return;
    const { name, look: looked, chosen, unsaved } = state;
    setState({ kind: 'taking', name, look: looked, chosen });
    const saved = mode === 'replace' && unsaved === null ? await store.saveFirst() : 'whole';
    if (saved !== 'whole') {
      return setState({ kind: 'looked', name, look: looked, chosen, problem: null, unsaved: saved });
    }
    const label = arrivalLabel(mode, name);
    const outcome: ReplaceOutcome = await store.takeCopy(label, looked, { mode, choices: chosen });
    if (outcome.state === 'notKept') {
      return setState({ kind: 'looked', name, look: looked, chosen, problem: outcome.why, unsaved });
    }
    setState({ kind: 'told', mode, plan: looked.plan, chosen, newLetter: outcome.newLetter ?? null, label });
  };
  const label = state.kind === 'told' ? state.label : null;
  return {
    state,
    chooser,
    look: (files) => void look(files),
    choose: (id, choice) =>
      setState((now) => (now.kind === 'looked' ? { ...now, chosen: { ...now.chosen, [id]: choice } } : now)),
    take: (mode) => void take(mode),
    leave: () => {
      turn.current += 1;
      putAway();
    },
    undo:
      label !== null && store.undoLabel === label
        ? () => {
            putAway();
            void store.undo();
          }
        : null,
  };
}

// Helpers

async function lookedAt({ lookAtCopy }: ArrivalStore, file: File): Promise<CopyLook> {
  try {
    return await lookAtCopy(file);
  } catch (error) {
    // Told to whoever looks for the cause; the maker is told what to do.
    reportError(error);
    const message = error instanceof Error ? error.message : String(error);
    return { state: 'notACopy', why: { code: 'notReadable', message } };
  }
}
