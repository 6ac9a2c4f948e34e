'use client';

import { createContext, useContext } from 'react';
import type { Workshop } from '@/shared/schemas/workshop';

/** The units and the currency in which the maker types and reads. */
export interface Measures {
  readonly units: Workshop['units'];
  /** ISO 4217 code. */
  readonly currency: string;
}

/** @returns the measures of a workshop; metric ones while there is none. */
export const measuresOf = (workshop: Workshop | null): Measures =>
  workshop === null
    ? {
        units: { length: 'mm', temperature: 'C', pressure: 'kPa', volume: 'mL', distance: 'km' },
        currency: 'USD',
      }
    : { units: workshop.units, currency: workshop.currency };

/** The measures in force around a field. */
export const MeasuresContext = createContext<Measures>(measuresOf(null));

/** Reads the measures in force. */
export const useMeasures = () => useContext(MeasuresContext);
