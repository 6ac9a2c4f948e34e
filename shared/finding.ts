import type { FindingId } from '@/shared/tables/findingIds';

/** A stop withholds the price; a caution marks it; a note informs. */
export type Severity = 'stop' | 'caution' | 'note';

/** The part of the job a finding speaks of. Every part that is known is named. */
export interface Where {
  /** A kind of document, or `request` for a file that holds several. */
  readonly document: string;
  /** Id of the blank or artwork; absent for the job and the workshop, of which there is one. */
  readonly id?: string;
  /** Path of the field inside that document. */
  readonly path: readonly (string | number)[];
  readonly lineId?: string;
  readonly placementId?: string;
  readonly size?: string;
}

/** A measured value or a limit, with its unit, as the rule compared it. */
export interface Quantity {
  readonly value: number;
  readonly unit: string;
}

/** Documents in which a finding of a job can be mended. */
export const mendable = ['job', 'workshop', 'blank', 'artwork'] as const;

/** One value to write into one document so that the finding goes away. */
export interface Change {
  readonly document: (typeof mendable)[number];
  readonly id?: string;
  readonly path: readonly (string | number)[];
  readonly value: unknown;
}

/** The numbers and names a sentence needs. Lengths in mm, temperatures in °C, shares 0 to 1. */
export type Facts = Readonly<Record<string, string | number>>;

export interface Fix {
  /** Chooses the words of the button; facts fill them. */
  readonly label: string;
  readonly facts: Facts;
  readonly changes: readonly Change[];
}

export interface Finding {
  readonly id: FindingId;
  readonly severity: Severity;
  readonly where: Where;
  readonly found: Quantity | string | null;
  readonly limit: Quantity | string | null;
  /** Tells apart sentences of one rule. */
  readonly variant?: string;
  readonly facts: Facts;
  readonly fix: Fix | null;
  /** Whether a stated reason may let the job pass this stop. */
  readonly waivable: boolean;
  /** The reason the maker gave, when this stop was waived. */
  readonly waivedBecause?: string;
}

/** @returns whether the finding keeps the job from being costed or priced. */
export const isStanding = (finding: Finding): boolean =>
  finding.severity === 'stop' && finding.waivedBecause === undefined;
