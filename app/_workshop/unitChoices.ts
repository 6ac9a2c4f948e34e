import type { Workshop } from '@/shared/schemas/workshop';

interface UnitChoice {
  readonly kind: keyof Workshop['units'];
  readonly label: string;
  readonly choices: readonly Readonly<{ value: string; label: string }>[];
}

/** The units a maker chooses between, by what they measure. */
export const unitChoices: readonly UnitChoice[] = [
  {
    kind: 'length',
    label: 'Lengths',
    choices: [
      { value: 'in', label: 'Inches' },
      { value: 'mm', label: 'Millimetres' },
    ],
  },
  {
    kind: 'temperature',
    label: 'Temperatures',
    choices: [
      { value: 'F', label: 'Fahrenheit' },
      { value: 'C', label: 'Celsius' },
    ],
  },
  {
    kind: 'pressure',
    label: 'Pressures',
    choices: [
      { value: 'psi', label: 'psi' },
      { value: 'kPa', label: 'kPa' },
      { value: 'bar', label: 'bar' },
    ],
  },
  {
    kind: 'volume',
    label: 'Volumes',
    choices: [
      { value: 'mL', label: 'Millilitres' },
      { value: 'floz', label: 'US fluid ounces' },
    ],
  },
  {
    kind: 'distance',
    label: 'Distances',
    choices: [
      { value: 'mi', label: 'Miles' },
      { value: 'km', label: 'Kilometres' },
    ],
  },
];
