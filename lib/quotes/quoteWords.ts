import type { fibres } from '@/shared/schemas/blank';

/** Words of a quote's own lines in the customer's language; what stands in braces is filled in. */
export interface QuoteWords {
  /** An alternative of more or fewer pieces: `{pieces}` of `{name}`. */
  readonly pieces: string;
  /** Further pieces: `{count}` in `{size}`. */
  readonly more: string;
  readonly moreInMix: string;
  /** Fewer pieces: `{count}`. */
  readonly fewer: string;
  /** One print less: `{print}`. */
  readonly without: string;
  /** A small order of a capped list pays what `{as}` pieces of `{name}` cost. */
  readonly capped: string;
  /** By slabs the first pieces of `{name}` cost more than those beyond the break. */
  readonly firstPieces: string;
  /** Fewer pieces of `{name}` never cost more than those that were asked for. */
  readonly held: string;
  readonly fibres: Readonly<Record<(typeof fibres)[number], string>>;
}

/** Names on papers are no longer. */
const MOST_LETTERS = 120;

/** @returns a text that a paper takes for a name, cut where it is longer. */
export const asName = (text: string): string =>
  text.length <= MOST_LETTERS ? text : `${text.slice(0, MOST_LETTERS - 1).trimEnd()}…`;

/** @returns a template with its braces filled; a name that nobody gives stays as it stands. */
export const filled = (template: string, facts: Readonly<Record<string, string | number>>): string =>
  template.replace(/\{([a-z]+)\}/gi, (whole, name: string) =>
    Object.hasOwn(facts, name) ? String(facts[name]) : whole,
  );
