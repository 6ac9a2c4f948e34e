import type { Box, Work } from '@/lib/packing/box';
import { OpenSheet, type Place, type PlaceRule } from './openSheet';

export interface Bin {
  readonly width: number;
  readonly height: number;
  readonly mayTurn: boolean;
}

/**
 * Lays boxes in the given order, each on the first sheet with a place, or on the sheet with the best place.
 *
 * @param choice `first` looks at sheets in turn and stops at the first that has a place; `best` compares all
 * @param mostSheets gives up where more are needed
 * @returns null where it gave up
 */
export function fillSheets(
  boxes: readonly Box[],
  bin: Bin,
  how: { readonly rule: PlaceRule; readonly choice: 'first' | 'best'; readonly mostSheets: number },
  work: Work,
): OpenSheet[] | null {
  const sheets: OpenSheet[] = [];
  // Free room only shrinks: a sheet that once had no place for a kind never has one again.
  const open = new Map<number, number>();
  for (const box of boxes) {
    const found = findSheet(sheets, box, open.get(box.kind) ?? 0, bin, how, work);
    if (found.place !== null) {
      found.sheet.lay(box.kind, found.place, work);
      if (how.choice === 'first') open.set(box.kind, found.index);
      continue;
    }
    if (sheets.length >= how.mostSheets) return null;
    const sheet = new OpenSheet(bin.width, bin.height);
    const place = sheet.find(box, bin.mayTurn, how.rule, work);
    if (place === null) return null;
    sheet.lay(box.kind, place, work);
    if (how.choice === 'first') open.set(box.kind, sheets.length);
    sheets.push(sheet);
  }
  return sheets;
}

type Found =
  | { readonly place: Place; readonly sheet: OpenSheet; readonly index: number }
  | { readonly place: null };

function findSheet(
  sheets: readonly OpenSheet[],
  box: Box,
  from: number,
  bin: Bin,
  how: { readonly rule: PlaceRule; readonly choice: 'first' | 'best' },
  work: Work,
): Found {
  let best: Found = { place: null };
  const area = bin.width * bin.height - box.width * box.height;
  for (let index = from; index < sheets.length; index += 1) {
    const sheet = sheets[index];
    if (sheet === undefined || sheet.used > area) continue;
    const place = sheet.find(box, bin.mayTurn, how.rule, work);
    if (place === null) continue;
    if (how.choice === 'first') return { place, sheet, index };
    if (best.place === null || place.score < best.place.score) best = { place, sheet, index };
  }
  return best;
}
