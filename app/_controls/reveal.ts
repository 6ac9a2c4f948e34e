'use client';

import { createContext } from 'react';

/** Which field is to be shown; a new turn asks again for the same one. */
export interface Reveal {
  readonly id: string | null;
  readonly turn: number;
}

/** What folds listen to, so that a field can be shown wherever it is folded away. */
export const RevealContext = createContext<Reveal>({ id: null, turn: 0 });

/** @returns whether a field is one of those that are folded away under some ids. */
export const isHeldBy = (id: string | null, holds: readonly string[]): boolean =>
  id !== null && holds.some((fieldId) => id === fieldId || id.startsWith(`${fieldId}-`));
