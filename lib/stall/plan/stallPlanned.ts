import type { Where } from '@/shared/finding';
import type { StallGoods } from '@/shared/schemas/stallDay';

/** What is planned of some goods, and what a piece of them brings and costs. Currency units, unrounded. */
export interface GoodsPlanned extends StallGoods {
  readonly rangeId: string;
  readonly design: string;
  /** As written; tax inside where the way of selling has it. */
  readonly price: number;
  readonly netPrice: number;
  /** Card fees and commission of a piece at the mean share of cards and pieces a ticket. */
  readonly fees: number;
  readonly packaging: number;
  /** One more piece made, without packaging and overhead. */
  readonly cost: number;
  /** The same with the overhead on its minutes, which decides how many are brought. */
  readonly costWithOverhead: number;
  readonly leftoverShare: number;
  /** Pieces asked for over all days if all are dry. */
  readonly expected: number;
  readonly criticalRatio: number;
  readonly atHome: number;
  /** Of those, not pressed for the day: what they cost is paid. */
  readonly finishedBefore: number;
  /** The maker's number where one is held, else the advice. */
  readonly mine: number;
  readonly isHeld: boolean;
  /** Mean pieces sold of `mine`, over the weathers. */
  readonly sold: number;
  /** What the sums advise. */
  readonly advised: number;
  /** Why the advice is not the plain rule: trimmed for room, money or time, or raised by what lies at home; of `onceCost` designs only that comes along. */
  readonly advisedBy: 'rule' | 'atHome' | 'leastSizes' | 'onceCost' | 'tablePieces' | 'cash';
}

/** What comes of a plan in one weather, or in one order of weathers over several days. */
export interface StallOutcome {
  /** Names of the weathers, day by day. */
  readonly weather: string;
  readonly weatherIds: readonly string[];
  readonly chance: number;
  readonly factor: number;
  readonly sold: number;
  readonly takings: number;
  readonly netRevenue: number;
  readonly fees: number;
  /** Net revenue less fees, packaging and the cost of what is sold. */
  readonly contribution: number;
  /** Of the day and of the batch, own pay among it. */
  readonly fixed: number;
  /** Cost of what stays unsold, before it is written down. */
  readonly leftoverCost: number;
  readonly leftovers: number;
  readonly profit: number;
  /** Null where it takes no time. */
  readonly payPerHour: number | null;
}

export interface StallBreakEven {
  readonly cash: number;
  readonly withPay: number;
  readonly everything: number;
  /** Null where even all of it sold does not earn that. */
  readonly withWriteDown: number | null;
  /** What a piece leaves in the mix they rest on. */
  readonly contributionPerPiece: number;
}

export interface StallSpread {
  readonly sd: number;
  readonly lossChance: number;
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
  /** How many days were drawn, and from which seed. */
  readonly days: number;
  readonly seed: number;
}

/** One set of numbers, seen through. */
export interface StallPlanned {
  readonly bring: readonly (StallGoods & { readonly rangeId: string; readonly bring: number })[];
  readonly pieces: number;
  /** Pieces that are pressed for it. */
  readonly made: number;
  readonly outcomes: readonly StallOutcome[];
  readonly weighted: Omit<StallOutcome, 'weather' | 'weatherIds' | 'chance' | 'factor'>;
  readonly spread: StallSpread;
  /** Null where a piece leaves nothing. */
  readonly breakEven: StallBreakEven | null;
  readonly goOrStay: {
    /** What of the costs is saved by staying at home, own hours among it. */
    readonly avoidable: number;
    /** Spent either way. */
    readonly sunk: number;
    /** What going earns on a day that certainly has the worst weather, before avoidable costs. */
    readonly worst: {
      readonly weather: string;
      readonly weatherIds: readonly string[];
      readonly earns: number;
      readonly payPerHour: number | null;
    };
    /** Weather factor below which staying pays; 0 where going always pays, null where staying always does. */
    readonly stayHomeBelow: number | null;
    readonly verdict: 'go' | 'goUnless' | 'stay';
  };
  /** Laid out before the first sale, and the same with packaging. */
  readonly cashBefore: number;
  readonly cashBeforeWithPackaging: number;
  /** What of it is paid already; the limit of cash is of the rest. */
  readonly paid: number;
  readonly makingCost: number;
  readonly batch: number;
  readonly benchHours: number;
  readonly dayHours: number;
  /** What is more than the limits allow; hours warn, and trim nothing. */
  readonly over: readonly {
    readonly limit: 'tablePieces' | 'cash' | 'benchHours';
    readonly is: number;
    readonly most: number;
  }[];
}

/** Why there is no plan, or what is to be settled beside it. */
export type StallTrouble =
  | { readonly kind: 'noJobs' }
  | { readonly kind: 'jobMissing'; readonly jobId: string }
  | {
      readonly kind: 'lineMissing';
      readonly jobId: string;
      readonly lineId: string;
      readonly jobName: string;
    }
  /** A job that cannot be costed; its own screen says why. */
  | { readonly kind: 'jobStopped'; readonly jobId: string; readonly jobName: string }
  | { readonly kind: 'noPrice'; readonly goods: StallGoods; readonly design: string }
  | { readonly kind: 'noForecast'; readonly rangeId: string | null; readonly range: string | null }
  /** The forecast goes by days before, and none is ticked. */
  | { readonly kind: 'noPastDay' }
  | { readonly kind: 'noShares'; readonly rangeId: string; readonly range: string }
  /** Goods said to have one size come in several. */
  | { readonly kind: 'noMix'; readonly rangeId: string; readonly range: string }
  /** No size of the mix is one that a design comes in. */
  | { readonly kind: 'noSizes'; readonly rangeId: string; readonly range: string; readonly design: string }
  | { readonly kind: 'noWeather' }
  /** Of several days, for theirs in every order would be too many. */
  | { readonly kind: 'oneWeather' }
  | { readonly kind: 'chances'; readonly sum: number }
  | { readonly kind: 'noLeftoverShare' }
  | { readonly kind: 'noDays' }
  /** One date stands twice; `at` is where it stands again. */
  | { readonly kind: 'sameDay'; readonly at: number }
  | { readonly kind: 'noChannel' }
  | {
      readonly kind: 'channelLacks';
      readonly what: 'tax' | 'cardFee' | 'cardFixedFee' | 'cardShare' | 'piecesPerTicket' | 'commission';
    }
  | { readonly kind: 'costUnknown'; readonly costId: string; readonly what: string }
  | { readonly kind: 'wageUnknown' }
  | { readonly kind: 'travelRateUnknown'; readonly costId: string }
  /** Less than nothing lies at home by what was noted; the plan goes on as if nothing did. */
  | {
      readonly kind: 'stockBelowZero';
      readonly goods: StallGoods;
      readonly design: string;
      readonly pieces: number;
    }
  | { readonly kind: 'otherCurrency'; readonly jobId: string; readonly jobName: string };

export type StallAnswer =
  | { readonly kind: 'refused'; readonly troubles: readonly StallTrouble[] }
  | {
      readonly kind: 'planned';
      readonly currency: string;
      readonly goods: readonly GoodsPlanned[];
      /** With the maker's numbers where they are held. */
      readonly mine: StallPlanned;
      /** With the advice for everything. */
      readonly advice: StallPlanned;
      /** With the advice for one range alone, all else as held: what taking it would do. */
      readonly taking: readonly {
        readonly rangeId: string;
        readonly weightedProfit: number;
        readonly pieces: number;
        readonly outcomes: readonly StallOutcome[];
      }[];
      /** At most what a better choice within the limits could earn more than the advice; 0 where there is none. */
      readonly limitGap: number;
      /** Within the limits nothing can be brought, though something would be: the least with which something can. */
      readonly nothingFits:
        | { readonly limit: 'tablePieces'; readonly most: number; readonly least: number }
        /** `setAside` is what the day and its batch take before any piece. */
        | {
            readonly limit: 'cash';
            readonly most: number;
            readonly setAside: number;
            readonly least: number;
          }
        | null;
      /** Said beside the plan; none of it stops it. */
      readonly troubles: readonly StallTrouble[];
      /** Figures it rests on, how many of them are typical, and the first of these. */
      readonly restsOn: { readonly figures: number; readonly typical: number; readonly first: Where | null };
    };
