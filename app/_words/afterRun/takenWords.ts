import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import type { Lesson } from '@/lib/learning/lesson';
import type { LearnedSubject, RateTaken } from '@/shared/schemas/making/learnedEvents';

/** “Taken over Nov 28, 2026, in 1 place: 3.5 → 4.12 %, measured 41×.”; sizes of one blank that moved alike together. */
export function takenWords(bodies: readonly [RateTaken, ...RateTaken[]], formatter: Formatter): string {
  const [first] = bodies;
  const unit = takenUnit(first.subject);
  const places = bodies.reduce((sum, body) => sum + body.places.length, 0);
  const alike = new Map<string, string[]>();
  for (const { subject, places: own } of bodies) {
    const moved = placesWords(own, unit, formatter);
    const size = subject.of === 'blankPrice' ? [subject.size] : [];
    if (moved !== null) alike.set(moved, [...(alike.get(moved) ?? []), ...size]);
  }
  const told = [...alike].map(([moved, sizes]) => (sizes.length === 0 ? moved : `${listed(sizes)} ${moved}`));
  const rests = unit === 'money' ? 'as paid' : `measured ${formatter.number(first.observations)}×`;
  return `Taken over ${formatter.day(first.day)}, in ${formatter.count(places, 'place')}: ${[
    told.join('; '),
    rests,
  ]
    .filter((words) => words !== '')
    .join(', ')}.`;
}

// Helpers

type Held = RateTaken['places'][number]['before'];

/** In what a figure that was taken over is told; null of a mix, which is no one figure. */
function takenUnit({ of }: LearnedSubject): Lesson['unit'] | null {
  switch (of) {
    case 'scrap':
    case 'blankFault':
    case 'sheetReject':
      return 'share';
    case 'blankPrice':
    case 'sheetPrice':
    case 'consumablePrice':
    case 'inkPrice':
      return 'money';
    case 'minutes':
      return 'min';
    case 'ink':
      return 'mL';
    case 'sizeMix':
      return null;
    default:
      return of satisfies never;
  }
}

/** “3.5 → 4.12 %”; where places held other figures than one another, the least and the most of them. */
function placesWords(
  places: RateTaken['places'],
  unit: Lesson['unit'] | null,
  formatter: Formatter,
): string | null {
  if (unit === null) return null;
  const figureOf = (held: Held) =>
    typeof held === 'object' && held !== null && 'value' in held ? held.value : held;
  const figures = (of: 'before' | 'after') =>
    places.map((place) => figureOf(place[of])).filter((value) => typeof value === 'number');
  const [before, after] = [figures('before'), figures('after')];
  if (after.length === 0) return null;
  const written = (value: number) =>
    unit === 'money'
      ? formatter.smallMoney(value)
      : formatter.number(unit === 'share' ? value * 100 : value, 2);
  const span = (all: readonly number[]) =>
    [...new Set([Math.min(...all), Math.max(...all)].map(written))].join('–');
  const name = unit === 'money' ? '' : unit === 'share' ? ' %' : ` ${unit}`;
  return `${before.length === 0 ? 'none' : span(before)} → ${span(after)}${name}`;
}
