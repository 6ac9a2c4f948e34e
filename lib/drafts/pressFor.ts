import type { Blank } from '@/shared/schemas/blank';
import type { Press, Workshop } from '@/shared/schemas/workshop';
import { freeName } from './freeName';
import { newParts } from './newParts';

type BlankOfPress = Pick<Blank, 'kind' | 'substrate'>;

/** @returns whether a kind of press can press a blank: a curved piece wants one that wraps it, or an oven; cloth and flat goods a flat one. */
export function suitsPress(press: Press['kind'], blank: Pick<Blank, 'kind'>): boolean {
  switch (press) {
    case 'flat':
      return blank.kind !== 'drinkware';
    case 'mug':
    case 'tumbler':
      return blank.kind === 'drinkware';
    case 'oven':
      return blank.kind !== 'garment' && blank.kind !== 'bag' && blank.kind !== 'cushion';
    default:
      return press satisfies never;
  }
}

/** @returns the kind of press a blank is usually pressed on. */
export function usualPressKind({ kind, substrate }: BlankOfPress): Press['kind'] {
  if (kind !== 'drinkware') return 'flat';
  if (substrate === 'steelTumblerOven') return 'oven';
  return substrate === 'steelTumblerPress' ? 'tumbler' : 'mug';
}

/** @returns the press of a workshop for a blank: of the usual kind, else one that can; null where none can. */
export function pressFor(blank: BlankOfPress, presses: readonly Press[]): Press | null {
  const usual = usualPressKind(blank);
  return (
    presses.find(({ kind }) => kind === usual) ?? presses.find(({ kind }) => suitsPress(kind, blank)) ?? null
  );
}

const names: Readonly<Record<Press['kind'], string>> = {
  flat: 'Flat press',
  mug: 'Mug press',
  tumbler: 'Tumbler press',
  oven: 'Oven',
};

/**
 * A press of the kind a blank wants, to be added to a workshop that lacks it; every figure is typical.
 *
 * @param day the day its figures are set, YYYY-MM-DD
 */
export function missingPress(blank: BlankOfPress, workshop: Workshop, day: string): Press {
  const kind = usualPressKind(blank);
  const ids = workshop.presses.map(({ id }) => id);
  const name = freeName(
    names[kind],
    workshop.presses.map((press) => press.name),
  );
  return newParts(day, workshop).press(freeId(kind, ids), name, kind);
}

/** `mug-press`, with a number after it where another press has it. */
const freeId = (kind: Press['kind'], taken: readonly string[]): string =>
  freeName(`${kind}-press`, taken).replaceAll(' ', '-');
