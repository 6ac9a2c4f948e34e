import { childSizes } from '@/lib/check/children/childSize';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { Audience } from '@/shared/schemas/job';
import { sizeCurves } from '@/shared/tables/sizeCurves';

interface SizeShare {
  readonly size: string;
  /** Of the pieces of the line. */
  readonly share: number;
  /** Of the crowd, over the sizes that the blank has. */
  readonly usual: number;
}

/**
 * A line's mix of sizes beside that of a crowd. A blank that lacks a size of the curve spreads its share over the
 * others; one with sizes that no curve knows, or of children
 * beside a crowd of grown-ups, cannot be compared.
 *
 * @returns an entry for each size of the blank; none where a size has no place on the curve
 */
export function curveShares({ blank, sizes }: ResolvedLine, audience: Audience): readonly SizeShare[] {
  const curve = sizeCurves[audience];
  const names = blank.sizes.map(({ name }) => name);
  const children = childSizes(names, blank.forChildren).size;
  // A child's M is no M of a grown-up: sizes of both, or of the other crowd, are not compared.
  if (children !== 0 && (audience !== 'youth' || children !== names.length)) return [];
  const known = blank.sizes.flatMap(({ name }) => {
    const share = curve[letterOf(name)];
    return share === undefined ? [] : [{ size: name, share }];
  });
  const whole = known.reduce((sum, { share }) => sum + share, 0);
  const pieces = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
  if (known.length !== blank.sizes.length || known.length < 2) return [];
  return known.map(({ size, share }) => ({
    size,
    share: (sizes.find((wanted) => wanted.size === size)?.quantity ?? 0) / pieces,
    usual: share / whole,
  }));
}

/** The letters of a size, without whom it is for: "Youth M" and "YM" are M, "XXL" is 2XL. */
function letterOf(name: string): string {
  const letters = name
    .toUpperCase()
    .replace(/\b(YOUTH|ADULT|WOMEN|WOMENS|LADIES|KIDS|MENS?)\b/g, '')
    .trim()
    .replace(/^Y(?=(XS|S|M|L|XL)$)/, '');
  return letters.replace(/^(X{2,})(?=[SL]$)/, (run) => `${run.length}X`);
}
