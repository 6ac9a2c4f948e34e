'use client';

import {
  type FocusEvent,
  type KeyboardEvent,
  type RefObject,
  useCallback,
  useLayoutEffect,
  useRef,
} from 'react';

interface ArrowKeys {
  readonly ref: RefObject<HTMLTableElement | null>;
  readonly onKeyDown: (event: KeyboardEvent<HTMLTableElement>) => void;
  readonly onFocus: (event: FocusEvent<HTMLTableElement>) => void;
}

/**
 * Makes the buttons of a table one stop of the Tab key, with arrow keys between them: up and down within a column,
 * Home and End to the ends of a row. What is hidden on this screen is passed over; a cell over several columns, as an
 * opened figure has, keeps its own stops.
 */
export function useArrowKeys(): ArrowKeys {
  const ref = useRef<HTMLTableElement>(null);
  // Figures come and go with every answer: after each drawing there is one stop again, where the last one was.
  useLayoutEffect(() => {
    if (ref.current !== null) settle(ref.current, null);
  });
  const onFocus = useCallback((event: FocusEvent<HTMLTableElement>) => {
    const button = event.target;
    if (button instanceof HTMLButtonElement && isOfGrid(button)) settle(event.currentTarget, button);
  }, []);
  const onKeyDown = useCallback((event: KeyboardEvent<HTMLTableElement>) => {
    const button = event.target;
    if (!(button instanceof HTMLButtonElement) || !isOfGrid(button)) return;
    const cell = button.closest<HTMLTableCellElement>('td, th');
    const row = cell?.parentElement;
    if (cell == null || !(row instanceof HTMLTableRowElement)) return;
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const next = nextOf(event.key, event.currentTarget, row, cell);
    if (next === null) return;
    event.preventDefault();
    next.focus();
  }, []);
  return { ref, onKeyDown, onFocus };
}

// Helpers

/** Makes one button the stop: the given one, else the one that was it, else the first that is seen. */
function settle(table: HTMLTableElement, chosen: HTMLButtonElement | null): void {
  const buttons = [...table.querySelectorAll('button')].filter(isOfGrid);
  const seen = (button: HTMLButtonElement) => isSeen(button.closest('td, th'));
  const stop =
    chosen ?? buttons.find((one) => one.hasAttribute('data-stop') && seen(one)) ?? buttons.find(seen);
  for (const button of buttons) {
    button.tabIndex = button === stop ? 0 : -1;
    button.toggleAttribute('data-stop', button === stop);
  }
}

const isOfGrid = (button: HTMLButtonElement): boolean =>
  button.closest<HTMLTableCellElement>('td, th')?.colSpan === 1;

function nextOf(
  key: string,
  table: HTMLTableElement,
  row: HTMLTableRowElement,
  cell: HTMLTableCellElement,
): HTMLElement | null {
  switch (key) {
    case 'ArrowLeft':
      return firstIn([...row.cells].slice(0, cell.cellIndex).reverse());
    case 'ArrowRight':
      return firstIn([...row.cells].slice(cell.cellIndex + 1));
    case 'Home':
      return firstIn([...row.cells]);
    case 'End':
      return firstIn([...row.cells].reverse());
    case 'ArrowUp':
      return firstIn(column(table, row, cell, -1));
    case 'ArrowDown':
      return firstIn(column(table, row, cell, 1));
    default:
      return null;
  }
}

/** The cells of a column from a row on, that row left out. */
function column(
  table: HTMLTableElement,
  from: HTMLTableRowElement,
  { cellIndex }: HTMLTableCellElement,
  down: 1 | -1,
): readonly HTMLTableCellElement[] {
  const rows = [...table.rows];
  const at = rows.indexOf(from);
  const ahead = down === 1 ? rows.slice(at + 1) : rows.slice(0, at).reverse();
  return ahead.flatMap(({ cells }) => cells[cellIndex] ?? []);
}

function firstIn(cells: readonly HTMLTableCellElement[]): HTMLElement | null {
  for (const cell of cells) {
    const button = cell.colSpan === 1 && isSeen(cell) ? cell.querySelector('button') : null;
    if (button !== null) return button;
  }
  return null;
}

const isSeen = (cell: Element | null): boolean => cell !== null && getComputedStyle(cell).display !== 'none';
