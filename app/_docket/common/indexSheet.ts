'use client';

import { createContext, useContext } from 'react';

/** Opens the sheet with the index of the docket; does nothing where there is none. */
export const IndexSheetContext = createContext<() => void>(() => undefined);

/** What a button at the thumb calls to show every section of the docket. */
export const useIndexSheet = (): (() => void) => useContext(IndexSheetContext);
