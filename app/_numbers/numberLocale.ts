'use client';

import { createContext, useContext } from 'react';

/** The locale numbers are typed and shown in; the page's own language until a workshop says otherwise. */
export const NumberLocale = createContext('en');

/** Reads the number locale in force. */
export const useNumberLocale = () => useContext(NumberLocale);
