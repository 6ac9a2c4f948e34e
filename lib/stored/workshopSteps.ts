import { isPlainObject } from './sameValue';

/** Version 1 to 2: which side a printer prints is asked, and every sheet was transfer paper. */
export const workshopWithPaper = (body: unknown): unknown =>
  isPlainObject(body)
    ? {
        ...body,
        printers: each(body.printers, (printer) => ({ ...printer, printedSide: null })),
        sheets: each(body.sheets, (sheet) => ({ ...sheet, paper: 'transfer' })),
      }
    : body;

const each = (
  list: unknown,
  step: (entry: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>,
): unknown =>
  Array.isArray(list) ? list.map((entry) => (isPlainObject(entry) ? step(entry) : entry)) : list;
