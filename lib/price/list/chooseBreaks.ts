import { type BreakEdges, type BreakNeeds, breakEdges } from './breakEdges';

interface BreakQuestion extends BreakNeeds {
  readonly count: number;
  /** Quantities that must begin a break, because the maker has a price of their own for it. */
  readonly kept: readonly number[];
  /** How odd a quantity is to begin a break with; 0 for those that are customary. */
  readonly oddness: (n: number) => number;
}

interface ChosenStarts {
  /** Rising; as many as asked, or fewer where more would change nothing. */
  readonly starts: readonly number[];
  /** The largest overcharge of the best list there is, before starts are moved to customary quantities. */
  readonly least: number;
}

/** So much dearer, as a share of what an order must bring, a list may be for starts that are customary. */
const WORTH_OF_CUSTOM = 0.01;
const NOISE = 1e-12;

/**
 * The first quantities for which no order of a capped list pays much over what it must bring: of all lists of so many
 * breaks the one whose largest overcharge min(pₖ n, nₖ₊₁ pₖ₊₁) ÷ T(n) − 1 is least, with prices on the maker's ending;
 * then, where that costs less than a point in all, those that begin at customary quantities. By dynamic programming
 * over the starts.
 */
export function chooseBreaks(question: BreakQuestion): ChosenStarts {
  const edges = breakEdges(question);
  const best = bestLists(question, edges, Number.POSITIVE_INFINITY, 'worst');
  const least = Math.min(...best.map(({ score }) => score));
  const customary = bestLists(question, edges, least + WORTH_OF_CUSTOM - NOISE, 'oddness');
  return { starts: customary.at(-1)?.starts ?? [question.from], least };
}

// Helpers

/**
 * The best list of each number of breaks, fewest first; a number that no list has is left out.
 *
 * @param allowed breaks that overcharge more take no part
 * @param by `worst`: the largest overcharge is least; `oddness`: the starts are least odd, then the sum of the largest
 *   overcharges of the breaks is least
 */
function bestLists(
  { count, kept, from, judgedTo, oddness }: BreakQuestion,
  { nodes, ...edges }: BreakEdges,
  allowed: number,
  by: 'worst' | 'oddness',
): readonly { readonly score: number; readonly starts: readonly number[] }[] {
  const last = Math.max(from, judgedTo);
  const fixed = kept.filter((start) => start > from && start <= last);
  const startOf = (node: number) => nodes[node]?.start ?? last + 1;
  const odd = Float64Array.from(nodes, ({ start }) => (by === 'oddness' ? oddness(start) : 0));
  const usable = usableEdges();
  const layers: Layer[] = [];
  for (let breaks = 1; breaks <= Math.max(count, fixed.length + 1); breaks += 1) {
    const before = layers.at(-1);
    const layer = emptyLayer(nodes.length);
    for (const edge of usable) {
      const own = edges.from[edge] ?? 0;
      const next = edges.to[edge] ?? -1;
      if (next < 0 !== (before === undefined)) continue;
      const rest = before === undefined ? 0 : (before.score[next] ?? Number.POSITIVE_INFINITY);
      if (rest === Number.POSITIVE_INFINITY) continue;
      const over = edges.overcharge[edge] ?? 0;
      const score = by === 'worst' ? Math.max(over, rest) : (odd[own] ?? 0) + rest;
      const sum = by === 'worst' ? 0 : Math.max(0, over) + (before?.sum[next] ?? 0);
      const known = layer.score[own] ?? Number.POSITIVE_INFINITY;
      if (score > known + NOISE) continue;
      if (score > known - NOISE && sum >= (layer.sum[own] ?? 0) - NOISE) continue;
      layer.score[own] = score;
      layer.sum[own] = sum;
      layer.next[own] = next;
    }
    layers.push(layer);
  }
  return layers.flatMap((layer, index) => {
    const first = bestNode(layer);
    return first === null
      ? []
      : [{ score: layer.score[first] ?? 0, starts: startsOf(first, layers.slice(0, index + 1)) }];
  });

  function usableEdges(): readonly number[] {
    const found: number[] = [];
    for (let edge = 0; edge < edges.from.length; edge += 1) {
      if ((edges.overcharge[edge] ?? 0) > allowed) continue;
      const start = startOf(edges.from[edge] ?? 0);
      const end = startOf(edges.to[edge] ?? -1);
      if (!fixed.some((one) => one > start && one < end)) found.push(edge);
    }
    return found;
  }

  function bestNode({ score, sum }: Layer): number | null {
    let best: number | null = null;
    for (let node = 0; node < nodes.length && startOf(node) === from; node += 1) {
      const [own = 0, least = Number.POSITIVE_INFINITY] = [
        score[node],
        best === null ? undefined : score[best],
      ];
      const tied = own <= least + NOISE && (sum[node] ?? 0) < (best === null ? 0 : (sum[best] ?? 0)) - NOISE;
      if (own < least - NOISE || tied) best = node;
    }
    return best;
  }

  function startsOf(first: number, ways: readonly Layer[]): readonly number[] {
    const starts = [startOf(first)];
    let node = first;
    for (const { next } of ways.toReversed()) {
      node = next[node] ?? -1;
      if (node < 0) break;
      starts.push(startOf(node));
    }
    return starts;
  }
}

/** The best list that begins with each break, of one number of breaks. */
interface Layer {
  readonly score: Float64Array;
  readonly sum: Float64Array;
  readonly next: Int32Array;
}

const emptyLayer = (nodes: number): Layer => ({
  score: new Float64Array(nodes).fill(Number.POSITIVE_INFINITY),
  sum: new Float64Array(nodes),
  next: new Int32Array(nodes).fill(-1),
});
