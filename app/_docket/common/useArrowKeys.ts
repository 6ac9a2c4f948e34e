'use client';

import { type KeyboardEvent, useCallback } from 'react';

/**
 * Arrow keys between the buttons of a table, up and down within a column. Every button keeps its place in the tab
 * order; what is hidden on this screen is passed over.
 */
export function useArrowKeys() {
  return useCallback((event: KeyboardEvent<HTMLTableElement>) => {
    const step = steps[event.key];
    const cell = event.target instanceof HTMLButtonElement ? event.target.closest('td') : null;
    const row = cell?.parentElement;
    if (step === undefined || cell === null || !(row instanceof HTMLTableRowElement)) return;
    if (event.ctrlKey || event.metaKey || event.altKey || cell.colSpan > 1) return;
    const next =
      step.across === 0 ? below(event.currentTarget, row, cell, step.down) : beside(cell, step.across);
    if (next === null) return;
    event.preventDefault();
    next.focus();
  }, []);
}

// Helpers

const steps: Readonly<Record<string, { readonly across: number; readonly down: number }>> = {
  ArrowLeft: { across: -1, down: 0 },
  ArrowRight: { across: 1, down: 0 },
  ArrowUp: { across: 0, down: -1 },
  ArrowDown: { across: 0, down: 1 },
};

function beside(cell: HTMLTableCellElement, across: number): HTMLElement | null {
  for (
    let next = across < 0 ? cell.previousElementSibling : cell.nextElementSibling;
    next !== null;
    next = across < 0 ? next.previousElementSibling : next.nextElementSibling
  ) {
    const button = buttonIn(next);
    if (button !== null) return button;
  }
  return null;
}

function below(
  table: HTMLTableElement,
  from: HTMLTableRowElement,
  cell: HTMLTableCellElement,
  down: number,
): HTMLElement | null {
  const rows = [...table.rows];
  for (let at = rows.indexOf(from) + down; at >= 0 && at < rows.length; at += down) {
    const found = rows[at]?.cells[cell.cellIndex];
    const button = found === undefined ? null : buttonIn(found);
    if (button !== null) return button;
  }
  return null;
}

function buttonIn(cell: Element): HTMLElement | null {
  const button = cell.querySelector<HTMLButtonElement>(':scope > button');
  return button !== null && getComputedStyle(cell).display !== 'none' ? button : null;
}
