import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank } from '@/shared/schemas/blank';
import type { Job, Line, Placement } from '@/shared/schemas/job';
import type { OwnRow } from '@/shared/schemas/ownRow';
import type { Rate } from '@/shared/schemas/rate';
import type { JobInput } from '@/shared/schemas/request';
import type { Channel, Packaging, Press, Printer, Sheet, Workshop } from '@/shared/schemas/workshop';
import type { RateName } from '@/shared/tables/rateCatalogue';

/** A document part whose rates are all known; those in `Optional` may stay unknown because nothing needs them. */
export type Known<Part, Optional extends keyof Part = never> = {
  readonly [Key in keyof Part]: null extends Part[Key]
    ? Exclude<Part[Key], null> extends Rate
      ? Key extends Optional
        ? Rate | null
        : Rate
      : Part[Key]
    : Part[Key];
};

export type KnownPrinter = Known<Printer, 'lifeYears' | 'sheetsPerYear'>;
/** Terms of selling may be open: no sum needs the share of retail, and selling counts only where it is known. */
export type KnownChannel = Known<
  Channel,
  'shareOfRetail' | 'sellingMinutesPerPiece' | 'dayCost' | 'dayPieces'
>;
export type KnownPress = Known<Press, 'lifeYears' | 'pressesPerYear' | 'partsPrice' | 'partsInterval'>;

export interface ResolvedSize {
  readonly size: string;
  /** Good pieces wanted, 1 or more. */
  readonly quantity: number;
  readonly blankPrice: Rate;
  /** Asked price of this size with its up-charge, as typed; null where none is decided. */
  readonly askedPrice: number | null;
  /** What the order of its line pays once on top of the pieces, as typed; all sizes bear it alike. */
  readonly askedStart: number | null;
}

export type TotalCoverage =
  | { readonly value: number; readonly origin: 'typical' | 'yours' }
  /** `blackShare` is what the printer prints of the grey with black. */
  | { readonly value: number; readonly origin: 'read'; readonly blackShare: number };

export interface ResolvedPlacement {
  readonly placement: Placement;
  readonly artwork: Artwork;
  readonly press: KnownPress;
  readonly scrap: Rate;
  readonly handMinutes: Rate;
  readonly aloneMinutes: Rate;
  readonly hotMinutes: Rate;
  /**
   * Sum over the channels, 0 to 4. One that is `read` is that of the picture over its own box, as the job's printer
   * lays it down; how it lies in a print's box still counts.
   */
  readonly totalCoverage: TotalCoverage;
  readonly prepMinutes: Rate;
  /** Prepared for an earlier order: so said at any print of it in the job. */
  readonly isArtReady: boolean;
}

export interface ResolvedLine {
  readonly line: Line;
  readonly blank: Blank;
  readonly blankFault: Rate;
  readonly finishMinutes: Rate;
  /** Null where nothing is packed piece by piece. */
  readonly packaging: Known<Packaging> | null;
  /** Sizes with a quantity above 0, in the order of the blank. */
  readonly sizes: readonly ResolvedSize[];
  /** In press order, one to four. */
  readonly placements: readonly ResolvedPlacement[];
}

/** A job with every reference followed and every rate filled in, typical where the maker has none. */
export interface ResolvedJob {
  readonly asOf: string;
  readonly job: Job;
  readonly workshop: Workshop;
  readonly rates: { readonly [Name in RateName]: Rate };
  readonly printer: KnownPrinter;
  readonly sheet: Known<Sheet>;
  readonly channel: KnownChannel;
  /** Null where the job pays no freight. */
  readonly freightIn: Rate | null;
  readonly lines: readonly ResolvedLine[];
  /** The workshop's own rows and the job's; a job's row replaces one of the same id. */
  readonly ownRows: readonly OwnRow[];
  /** What lies at home; ask `onHandOf`. */
  readonly onHand: JobInput['onHand'];
  readonly approvedVersions: JobInput['approvedVersions'];
  readonly layouts: JobInput['layouts'];
}

declare const checked: unique symbol;

/** A job that the check has passed: no stop stands. Only `checkJob` makes one. */
export interface CheckedJob extends ResolvedJob {
  readonly [checked]: true;
}
