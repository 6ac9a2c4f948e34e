import type { Workshop } from '@/shared/schemas/workshop';

interface UnitSet {
  readonly name: string;
  readonly label: string;
  readonly units: Workshop['units'];
}

/** The sets of units benches are worked in; single ones are changed later in the workshop. */
export const unitSets: readonly UnitSet[] = [
  {
    name: 'inch',
    label: 'Inches, °F, psi, miles',
    units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
  },
  {
    name: 'inchCelsius',
    label: 'Inches, °C, psi, kilometres',
    units: { length: 'in', temperature: 'C', pressure: 'psi', volume: 'mL', distance: 'km' },
  },
  {
    name: 'metric',
    label: 'Millimetres, °C, bar, kilometres',
    units: { length: 'mm', temperature: 'C', pressure: 'bar', volume: 'mL', distance: 'km' },
  },
  {
    name: 'metricMiles',
    label: 'Millimetres, °C, bar, miles',
    units: { length: 'mm', temperature: 'C', pressure: 'bar', volume: 'mL', distance: 'mi' },
  },
];
