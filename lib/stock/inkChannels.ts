import type { Workshop } from '@/shared/schemas/workshop';

type Printer = Pick<Workshop['printers'][number], 'blackShare' | 'lightInks'>;

/** Inks of a desktop printer by the names they are kept in stock under; common practice. */
export const inkNames = ['Cyan', 'Magenta', 'Yellow', 'Black'] as const;
export type InkName = (typeof inkNames)[number];

const light = ['Light cyan', 'Light magenta'] as const;

/** @returns the inks of full strength that a printer takes; one that prints no grey with black has none. */
export const strongInks = (blackShare: number | undefined): readonly InkName[] =>
  inkNames.filter((name) => name !== 'Black' || blackShare !== 0);

/** @returns the inks that a printer takes, by name. */
export const inkChannels = ({ blackShare, lightInks }: Printer): readonly string[] => [
  ...strongInks(blackShare?.value),
  ...(lightInks === true ? light : []),
];
