import type { CaseOf } from '@/shared/facts/findingCases';
import type { FixFacts } from '@/shared/facts/fixFacts';
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
interface Quantity {
  readonly value: number;
  readonly unit: string;
}

/** Documents in which a finding of a job can be mended. */
export const mendable = ['job', 'workshop', 'blank', 'artwork'] as const;

/**
 * One value to write into one document so that the finding goes away. An approval is no document: it is noted that the
 * customer said yes to the version in `value` of the artwork `id`, or with null that they take it back.
 */
export interface Change {
  readonly document: (typeof mendable)[number] | 'approval';
  readonly id?: string;
  readonly path: readonly (string | number)[];
  readonly value: unknown;
}

/** A button that makes a finding go away. Its label chooses the words, which the facts fill. */
export type Fix = {
  readonly [Label in keyof FixFacts]: {
    readonly label: Label;
    readonly facts: FixFacts[Label];
    readonly changes: readonly Change[];
  };
}[keyof FixFacts];

/** What every finding has, whatever it is about. */
interface FindingFrame {
  readonly severity: Severity;
  readonly where: Where;
  readonly found: Quantity | string | null;
  readonly limit: Quantity | string | null;
  readonly fix: Fix | null;
  /** Whether a stated reason may let the job pass this stop. */
  readonly waivable: boolean;
  /** The reason the maker gave, when this stop was waived. */
  readonly waivedBecause?: string;
}

/** Findings by their id: each with the facts its own sentences need. */
export type FindingsById = { readonly [Id in FindingId]: Of<FindingFrame, Id, CaseOf<Id>> };

export type Finding = FindingsById[FindingId];

/** What a rule writes of a finding; the rest follows. */
export type FindingDraft = { readonly [Id in FindingId]: Of<DraftFrame, Id, CaseOf<Id>> }[FindingId];

interface DraftFrame extends Pick<FindingFrame, 'severity' | 'where'> {
  readonly found?: FindingFrame['found'];
  readonly limit?: FindingFrame['limit'];
  readonly fix?: FindingFrame['fix'];
  /** False keeps this one stop from being waived where the rule as a whole may be. */
  readonly waivable?: boolean;
}

/** One type for each way the finding is put, so that looking at its variant tells its facts. */
type Of<Frame, Id extends FindingId, Case> = Case extends unknown
  ? Frame & { readonly id: Id } & Case
  : never;

/** @returns whether the finding keeps the job from being costed or priced. */
export const isStanding = (finding: Finding): boolean =>
  finding.severity === 'stop' && finding.waivedBecause === undefined;
