'use client';

import { createContext } from 'react';
import type { Where } from '@/shared/finding';

/** How the page around a figure takes the maker to the field a value is set in. */
export interface SettingShower {
  /** Whether the field is typed on this page. */
  readonly isHere: (where: Where) => boolean;
  readonly show: (where: Where) => void;
}

/** The page in force around a figure; nothing is typed on it unless it says so. */
export const ShowSetting = createContext<SettingShower>({ isHere: () => false, show: () => {} });
