import type { LearnedFrom } from './learnedFrom';
import type { Lesson } from './lesson';
import { shrunk } from './shrunk';

/**
 * Ink of a run against its standard, shrunk, told in mL of the last of these runs. It is only watched: how much ink a
 * print lays down follows the record of refills, which takes the cleaning out.
 */
export function learnedInk({ runs }: Pick<LearnedFrom, 'runs'>): readonly Lesson[] {
  const noted = runs.filter(
    ({ result }) => result.actuals.ink.quantityFrom === 'typed' && result.budget.ink.quantity > 0,
  );
  const standard = noted.at(-1)?.result.budget.ink.quantity;
  if (standard === undefined) return [];
  const { measured, spread } = shrunk(
    1,
    noted.map(({ result }) => result.actuals.ink.quantity / result.budget.ink.quantity),
  );
  return [
    {
      subject: { of: 'ink' },
      ...{ standard, measured: measured * standard, unit: 'mL', observations: noted.length },
      spread: spread === null ? null : spread * standard,
      ...{ upper: null, seen: null, runIds: noted.map(({ runId }) => runId), places: [] },
    },
  ];
}
