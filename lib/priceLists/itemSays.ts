import type { Line } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';

/** What a customer is told of an item: the blank, its colour, and what is printed on it. */
export function itemDescription({ blanks }: JobInput, line: Line): string {
  const blank = blanks[line.blankId];
  const prints = line.placements.map(({ name }) => name);
  const printed =
    prints.length < 2 ? prints.join('') : `${prints.slice(0, -1).join(', ')} and ${prints.at(-1)}`;
  return [blank?.name, printed === '' ? undefined : `with ${printed}`].filter(Boolean).join(', ');
}
