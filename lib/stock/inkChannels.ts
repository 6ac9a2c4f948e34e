import type { Workshop } from '@/shared/schemas/workshop';

type Printer = Pick<Workshop['printers'][number], 'blackShare' | 'lightInks'>;

/** Inks of a desktop printer by the names they are kept in stock under; common practice. */
const basic = ['Cyan', 'Magenta', 'Yellow'] as const;
const light = ['Light cyan', 'Light magenta'] as const;

/** @returns the inks that a printer takes, by name; one that prints no grey with black has none. */
export const inkChannels = ({ blackShare, lightInks }: Printer): readonly string[] => [
  ...basic,
  ...(blackShare?.value === 0 ? [] : ['Black']),
  ...(lightInks === true ? light : []),
];
