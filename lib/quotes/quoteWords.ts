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

/** @returns a template with its braces filled; a name that nobody gives stays as it stands. */
export const filled = (template: string, facts: Readonly<Record<string, string | number>>): string =>
  template.replace(/\{([a-z]+)\}/gi, (whole, name: string) =>
    Object.hasOwn(facts, name) ? String(facts[name]) : whole,
  );
