'use client';

import { createContext } from 'react';
import type { FigureNames } from '@/app/_trace/figureName';

/** The newest figures of the job, and what they were made of; null before the first. */
export const FigureNamesContext = createContext<FigureNames | null>(null);
