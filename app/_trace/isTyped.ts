import type { CostSheet } from '@/lib/grid/costSheet';
import type { FigureRef } from '@/lib/grid/traceFigure';

/** @returns whether a figure is filled in and not worked out, so that the way down ends there. */
export const isTyped = (sheet: CostSheet, { rowId }: FigureRef): boolean =>
  sheet.rows.find(({ id }) => id === rowId)?.formula === null;
