import { at } from '@/lib/packing/at';
import type { LaidBox } from '@/lib/packing/box';
import type { Section } from './section';

/**
 * Puts sections behind each other on prints: first prints full of one section, which are alike, then the longest
 * section left on the first print with room.
 *
 * First fit, longest first: D. Johnson and others, SIAM Journal on Computing 3, 299-325, 1974.
 *
 * @param longest print, ticks; no section is longer
 * @returns the boxes of each print
 */
export function printsOf(sections: readonly Section[], longest: number): readonly (readonly LaidBox[])[] {
  const alike = new Map<Section, number>();
  for (const section of sections) alike.set(section, (alike.get(section) ?? 0) + 1);
  const full: (readonly Section[])[] = [];
  const rest: Section[] = [];
  for (const [section, times] of alike) {
    const some = Math.floor(longest / section.length);
    for (let print = 0; print < Math.floor(times / some); print += 1) {
      full.push(Array.from({ length: some }, () => section));
    }
    rest.push(...Array.from({ length: times % some }, () => section));
  }
  const prints: { sections: Section[]; length: number }[] = [];
  for (const section of rest.sort((a, b) => b.length - a.length)) {
    const print = prints.find(({ length }) => length + section.length <= longest);
    if (print === undefined) prints.push({ sections: [section], length: section.length });
    else {
      print.sections.push(section);
      print.length += section.length;
    }
  }
  return [...full, ...prints.map((print) => print.sections)].map((some) => behindEachOther(some));
}

function behindEachOther(sections: readonly Section[]): readonly LaidBox[] {
  const boxes: LaidBox[] = [];
  let start = 0;
  for (let place = 0; place < sections.length; place += 1) {
    const section = at(sections, place);
    boxes.push(...section.boxes.map((box) => ({ ...box, y: box.y + start })));
    start += section.length;
  }
  return boxes;
}
