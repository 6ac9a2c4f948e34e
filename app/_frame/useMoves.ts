'use client';

import { useCallback, useState } from 'react';
import type { MoveOutcome } from '@/app/_store/documentsState';

/** A step of undo or redo that has just been made. */
export interface Move {
  readonly direction: 'undo' | 'redo';
  readonly outcome: Extract<MoveOutcome, { readonly state: 'moved' | 'lost' }>;
}

type MovesOf = Readonly<{
  undo: () => Promise<MoveOutcome>;
  redo: () => Promise<MoveOutcome>;
  undoLabel: string | null;
  redoLabel: string | null;
}>;

interface Moves {
  /** The last one, for as long as nothing else was edited since; null before the first. */
  readonly moved: Move | null;
  readonly onUndo: () => Promise<void>;
  readonly onRedo: () => Promise<void>;
  readonly onSeen: () => void;
}

/** Undo and redo, and what they did last. */
export function useMoves({ undo, redo, undoLabel, redoLabel }: MovesOf): Moves {
  const [last, setLast] = useState<Move | null>(null);
  const onUndo = useCallback(async () => setLast(moveOf('undo', await undo())), [undo]);
  const onRedo = useCallback(async () => setLast(moveOf('redo', await redo())), [redo]);
  const onSeen = useCallback(() => setLast(null), []);
  // What was undone is what redo offers now; once it offers something else, something else has happened.
  const offered = last?.direction === 'undo' ? redoLabel : undoLabel;
  const isCurrent = last?.outcome.state === 'lost' || last?.outcome.label === offered;
  return { moved: isCurrent ? last : null, onUndo, onRedo, onSeen };
}

const moveOf = (direction: Move['direction'], outcome: MoveOutcome): Move | null =>
  outcome.state === 'moved' || outcome.state === 'lost' ? { direction, outcome } : null;
