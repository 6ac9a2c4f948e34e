import type { Formatter } from '@/app/_words/formatter';

/** What stands in the waste of a transfer, beside the name of the job. */
export const wasteLineWords = {
  sheet: (number: number, of: number, isRoll: boolean): string =>
    `${isRoll ? 'Print' : 'Sheet'} ${number} of ${of}`,
  copies: (count: number): string => `Print ${count} x`,
  advice: 'Cut this strip off before pressing',
};

interface WasteRoom {
  readonly pages: number;
  /** Pages that get the line. */
  readonly withLine: number;
  readonly cuts: number;
  /** Cuts that have a mark at an edge at least. */
  readonly markedCuts: number;
  /** What a line needs, between the art and the printer's border. */
  readonly wideMm: number;
  readonly longMm: number;
}

/** Where lines in the waste have room, and what is to be done with them. */
export function wasteRoomWords(room: WasteRoom, formatter: Formatter): string {
  const advice = room.withLine === 0 ? [] : ['Cut it off before pressing, or its words end on the cloth.'];
  return [lineWords(room, formatter), ...advice, ...markWords(room, formatter)].join(' ');
}

function lineWords({ pages, withLine, wideMm, longMm }: WasteRoom, formatter: Formatter): string {
  const without = pages - withLine;
  if (withLine === 0)
    return `No page has room for it: it needs ${formatter.length(wideMm)} between the art and the printer’s border, ${formatter.length(longMm)} long.`;
  if (without === 0)
    return pages === 1 ? 'The page has room for it at an edge.' : 'Every page has room for it at an edge.';
  const some = `${formatter.number(withLine, 0)} of ${formatter.count(pages, 'page')} ${withLine === 1 ? 'has' : 'have'} room for it at an edge`;
  return `${some}; the other ${without === 1 ? 'one gets' : `${formatter.number(without, 0)} get`} none.`;
}

function markWords({ cuts, markedCuts }: WasteRoom, formatter: Formatter): readonly string[] {
  if (cuts === 0) return [];
  if (markedCuts === 0) return ['No edge has room for marks of the cuts: the cover page tells them.'];
  if (markedCuts === cuts) return ['Strokes at the edges show where to cut the roll: trim them off too.'];
  return [
    `Strokes at the edges show ${formatter.number(markedCuts, 0)} of ${formatter.count(cuts, 'cut')}: trim them off too. The cover page tells every cut.`,
  ];
}
