'use client';

import { useCallback, useId, useState } from 'react';
import type { FigureRef } from '@/lib/grid/traceFigure';

/** Which figure of a section stands open, at most one. */
export interface OpenFigure {
  readonly open: FigureRef | null;
  readonly panelId: string;
  readonly buttonId: (ref: FigureRef) => string;
  readonly isOpen: (ref: FigureRef) => boolean;
  readonly toggle: (ref: FigureRef) => void;
  /** Closes it, and puts the focus back on the figure it was opened from. */
  readonly close: () => void;
}

/** Keeps which figure is open. */
export function useOpenFigure(): OpenFigure {
  const base = useId();
  const [open, setOpen] = useState<FigureRef | null>(null);
  const buttonId = useCallback((ref: FigureRef) => `${base}-${keyOf(ref)}`, [base]);
  const isOpen = (ref: FigureRef) => open !== null && keyOf(open) === keyOf(ref);
  return {
    open,
    panelId: `${base}-panel`,
    buttonId,
    isOpen,
    toggle: (ref) => setOpen(isOpen(ref) ? null : ref),
    close: () => {
      if (open !== null) document.getElementById(buttonId(open))?.focus({ preventScroll: true });
      setOpen(null);
    },
  };
}

// Helpers

const keyOf = (ref: FigureRef): string => `${ref.rowId}-${ref.case ?? 'all'}-${ref.line ?? 'all'}`;
