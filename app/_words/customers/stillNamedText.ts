import type { StillNamed } from '@/lib/erasing/planErasure';
import { draftFacts } from '@/lib/kinds/draftFacts';
import { entryFacts } from '@/lib/kinds/entryFacts';

const MOST_LETTERS = 60;

/** Parts of records that are spoken of by a word of their own. */
const parts: Readonly<Record<string, string>> = {
  'openItems.what': 'open item',
  'charges.what': 'charge',
  'lines.name': 'line',
  'lines.placements.name': 'print',
  'ownRows.label': 'cost of your own',
  'waivers.reason': 'reason',
  'rights.note': 'note on the rights',
  'picture.fileName': 'file',
  'attachments.fileName': 'file',
  'receipt.fileName': 'file',
  underCostWhy: 'reason',
  note: 'note',
};

/**
 * @param of what the draft is called in which it stands; null where nothing of that needs telling
 * @returns a text that may name somebody, as a sentence tells it: “charge “Drive to Alex” of “Shirts””
 */
export function stillNamedText({ kind, path, text }: StillNamed, of: string | null): string {
  const part = parts[path];
  const word = Object.entries({ ...draftFacts, ...entryFacts }).find(([name]) => name === kind)?.[1].word;
  const said = `${part ?? word ?? 'record'} “${shortened(text)}”`;
  return of === null || of === text ? said : `${said} of “${of}”`;
}

function shortened(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length <= MOST_LETTERS ? line : `${line.slice(0, MOST_LETTERS).trimEnd()}…`;
}
