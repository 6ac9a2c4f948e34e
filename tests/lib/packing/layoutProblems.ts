/** Paper as the checker sees it; a roll has a height of Infinity. */
export interface Paper {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marginMm: number;
  readonly gutterMm: number;
}

export interface Place {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly turned: boolean;
}

export interface Asked {
  readonly id: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly count: number;
}

/** A hundredth of a millimetre is forgiven at the paper's edge, and nothing but the noise of sums between pieces. */
const EDGE_MM = 0.01 + 1e-6;
const NOISE_MM = 2e-5;

/** What is wrong with one sheet: pieces outside its margins, and pieces closer than the gutter. */
export function layoutProblems(places: readonly Place[], paper: Paper): readonly string[] {
  const { marginMm, gutterMm } = paper;
  const outside = places.filter(
    ({ xMm, yMm, widthMm, heightMm }) =>
      xMm < marginMm - NOISE_MM ||
      yMm < marginMm - NOISE_MM ||
      xMm + widthMm > paper.widthMm - marginMm + EDGE_MM ||
      yMm + heightMm > paper.heightMm - marginMm + EDGE_MM,
  );
  const problems = outside.map((place) => `outside: ${JSON.stringify(place)}`);
  const sorted = places.toSorted((a, b) => a.xMm - b.xMm);
  for (const [index, one] of sorted.entries()) {
    const right = one.xMm + one.widthMm + gutterMm - NOISE_MM;
    for (let other = index + 1; other < sorted.length; other += 1) {
      const next = sorted[other];
      if (next === undefined || next.xMm >= right) break;
      const isAbove = one.yMm + one.heightMm + gutterMm - NOISE_MM <= next.yMm;
      const isBelow = next.yMm + next.heightMm + gutterMm - NOISE_MM <= one.yMm;
      if (!isAbove && !isBelow) problems.push(`too close: ${JSON.stringify([one, next])}`);
    }
  }
  return problems;
}

/** What is wrong with the pieces of all sheets together: missing, too many, of another size, turned against the will. */
export function pieceProblems(
  placed: readonly (Place & { readonly id: string })[],
  asked: readonly Asked[],
  rotate: boolean,
): readonly string[] {
  const problems: string[] = [];
  for (const { id, widthMm, heightMm, count } of asked) {
    const mine = placed.filter((place) => place.id === id);
    if (mine.length !== count) problems.push(`${id}: ${mine.length} placed instead of ${count}`);
    for (const place of mine) {
      const [width, height] = place.turned ? [heightMm, widthMm] : [widthMm, heightMm];
      if (place.widthMm !== width || place.heightMm !== height) problems.push(`${id}: has another size`);
      if (place.turned && !rotate) problems.push(`${id}: may not turn`);
    }
  }
  const ids = new Set(asked.map(({ id }) => id));
  return [...problems, ...placed.filter(({ id }) => !ids.has(id)).map(({ id }) => `${id}: was not asked`)];
}
