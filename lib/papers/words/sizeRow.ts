import type { LabelKey, Labels } from './englishLabels';
import { apart, filled } from './labelsFor';
import type { SizeGroup } from './sizeGroups';

/** @returns sizes in a row: “S to XL” of three and more, else each. */
export function sizeRow(
  { names, hasGap }: Pick<SizeGroup, 'names' | 'hasGap'>,
  labels: Pick<Labels, Extract<LabelKey, 'sizeRange'>>,
): string {
  if (names.length < 3 || hasGap) return names.join(', ');
  return filled(labels.sizeRange, { first: apart(names[0] ?? ''), last: apart(names.at(-1) ?? '') });
}
