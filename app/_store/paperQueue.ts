import { sameValue } from '@/lib/merging/sameValue';
import type { Paper, PaperNumber } from '@/shared/schemas/happened';

/** What tells a paper apart from every other that might go out. */
interface PaperAsked {
  readonly kind: string;
  readonly about: Paper['about'];
  readonly series: string;
  body(number: PaperNumber): unknown;
}

interface UnderWay<Outcome> {
  /** What it says, whatever number it gets. */
  readonly says: unknown;
  readonly outcome: Promise<Outcome>;
}

/** Two bodies are laid side by side under one number, which neither of them need ever get. */
const ANY_NUMBER: PaperNumber = { count: 1, letter: 'A' };

/** Issues the papers of a series one after the other. A second press while the first is under way means the same paper. */
export function paperQueue<Outcome>(): (
  paper: PaperAsked,
  issue: () => Promise<Outcome>,
) => Promise<Outcome> {
  const bySeries = new Map<string, readonly UnderWay<Outcome>[]>();
  const underWay = (series: string) => bySeries.get(series) ?? [];
  return async (paper, issue) => {
    const { series, kind, about } = paper;
    const says = { kind, about, body: paper.body(ANY_NUMBER) };
    // A series may be of many orders: what another is issued is none of this one's.
    const same = underWay(series).find((other) => sameValue(other.says, says));
    if (same !== undefined) return same.outcome;
    const before = underWay(series).at(-1);
    const outcome = before === undefined ? issue() : settled(before.outcome).then(issue);
    const own = { says, outcome };
    bySeries.set(series, [...underWay(series), own]);
    try {
      return await outcome;
    } finally {
      const others = underWay(series).filter((one) => one !== own);
      if (others.length === 0) bySeries.delete(series);
      else bySeries.set(series, others);
    }
  };
}

/** Whoever asked for it is told what went wrong with it; who waits only waits. */
const settled = (outcome: Promise<unknown>): Promise<unknown> => outcome.catch(() => null);
