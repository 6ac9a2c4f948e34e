import type { Formatter } from '@/app/_words/formatter';
import type { Placement } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { choiceWords, jobChoices } from './choiceWords';

/** A placement in one line: size, place, press and the heart of its recipe. */
export function placementLineWords(placement: Placement, input: JobInput, formatter: Formatter): string {
  const { prints, position, pressId, recipe } = placement;
  const [first, ...others] = prints;
  const size = first === undefined ? '' : formatter.size(first.widthMm, first.heightMm);
  const press = input.workshop.presses.find(({ id }) => id === pressId)?.name;
  return [
    `${size}${others.length > 0 ? ` and ${formatter.count(others.length, 'other size')}` : ''}, ${choiceWords(jobChoices.position, position)}`,
    press ?? 'no press',
    `${formatter.number(recipe.temperature.value)} °${recipe.temperature.unit}, ${formatter.number(recipe.dwellSeconds)} s`,
  ].join(' · ');
}
