import type { FigureRef } from '@/lib/grid/traceFigure';
import type { Where } from '@/shared/finding';
import type { FieldPath } from '@/shared/setIn';
import { type RateName, rateNames } from '@/shared/tables/rateCatalogue';
import type { FigureNames } from './figureName';
import {
  artworkFields,
  channelFields,
  jobFields,
  lineFields,
  placementFields,
  pressFields,
  printerFields,
} from './settingFields';

/** The field in which the maker sets a value. */
export interface Setting {
  readonly where: Where;
  /** Ends the sentence “It is set …”. */
  readonly words: string;
}

/** @returns where a value that goes into the sums is set; null for one that nobody sets. */
export function whereSet(names: FigureNames, ref: FigureRef): Setting | null {
  return ofRate(names, ref) ?? ofOwnRow(names, ref) ?? ofWorkshop(names, ref) ?? ofPiece(names, ref);
}

// Helpers

const inJob = (path: FieldPath, words = 'in this job'): Setting => ({
  where: { document: 'job', path },
  words,
});

const inWorkshop = (path: FieldPath, under?: string): Setting => ({
  where: { document: 'workshop', path },
  words: under === undefined ? 'in the workshop' : `in the workshop, under “${under}”`,
});

function ofRate({ input }: FigureNames, { rowId }: FigureRef): Setting | null {
  if (!isRateName(rowId)) return null;
  return input.job.rates[rowId] === undefined
    ? inWorkshop(['rates', rowId])
    : inJob(['rates', rowId], 'for this job alone');
}

function ofOwnRow({ input: { job, workshop } }: FigureNames, { rowId }: FigureRef): Setting | null {
  const isIt = ({ id }: { readonly id: string }) => rowId === `amount_${id}`;
  const path = (at: number) => ['ownRows', at, 'cost', 'amount'];
  const own = job.ownRows.findIndex(isIt);
  if (own >= 0) return inJob(path(own), 'in your own row');
  const shared = workshop.ownRows.findIndex(isIt);
  return shared < 0 ? null : { ...inWorkshop(path(shared)), words: 'in your own row, for every job' };
}

/** Machines, paper, packaging and ways of selling. */
function ofWorkshop(names: FigureNames, ref: FigureRef): Setting | null {
  const { job, workshop } = names.input;
  const { name, slot } = plain(ref.rowId);
  const line = lineOf(names, ref);
  const found = (list: Backend, id: string | null | undefined, field: string | undefined): Setting | null => {
    if (field === undefined) return null;
    const at = workshop[list].findIndex((part) => part.id === id);
    return at < 0 ? null : inWorkshop([list, at, field], workshop[list][at]?.name);
  };
  const heated = [
    ...new Set(job.lines.flatMap(({ placements }) => placements.map(({ pressId }) => pressId))),
  ];
  const pressId = name.startsWith('warm') ? heated[slot - 1] : line?.line.placements[slot - 1]?.pressId;
  return (
    found('printers', job.printerId, printerFields[name]) ??
    found('presses', pressId, pressFields[name]) ??
    found('channels', job.channelId, channelFields[name]) ??
    found('sheets', job.sheetId, name === 'sheetPrice' ? 'price' : undefined) ??
    found('packagings', line?.line.packagingId, name === 'packagingPerPiece' ? 'perPiece' : undefined)
  );
}

/** The blank, and what is typed in the job. */
function ofPiece(names: FigureNames, ref: FigureRef): Setting | null {
  const { name, slot } = plain(ref.rowId);
  const ofJob = jobFields[name];
  if (ofJob !== undefined) return inJob([ofJob]);
  const found = lineOf(names, ref);
  if (found === null) return null;
  const { line, at } = found;
  const inBlank = (path: FieldPath): Setting => ({
    where: { document: 'blank', id: line.blankId, path },
    words: 'with the blank',
  });
  if (name === 'blankFault' || name === 'finishMinutes') return inBlank([name]);
  if (name === 'blankPrice') {
    const size = names.sheet.cases[ref.case ?? 0]?.size;
    const sizes = names.input.blanks[line.blankId]?.sizes ?? [];
    return inBlank(['sizes', sizes.findIndex((one) => one.name === size), 'price']);
  }
  const ofLine = lineFields[name];
  if (ofLine !== undefined) return inJob(['lines', at, ofLine], 'in this job, under “The job”');
  const placement = line.placements[slot - 1];
  if (placement === undefined) return null;
  const words = `in this job, with “${placement.name}”`;
  const ofPlacement = placementFields[name];
  if (ofPlacement !== undefined) return inJob(['lines', at, 'placements', slot - 1, ofPlacement], words);
  const ofArtwork = artworkFields[name];
  return ofArtwork === undefined
    ? null
    : {
        where: { document: 'artwork', id: placement.artworkId, placementId: placement.id, path: [ofArtwork] },
        words,
      };
}

type Backend = 'printers' | 'presses' | 'channels' | 'sheets' | 'packagings';

const isRateName = (id: string): id is RateName => rateNames.some((name) => name === id);

/** A row's name without the number of its placement or press. */
function plain(rowId: string): { readonly name: string; readonly slot: number } {
  const [, name = rowId, number = '1'] = /^(.*)_(\d+)$/.exec(rowId) ?? [];
  return { name, slot: Number(number) };
}

function lineOf({ sheet, input }: FigureNames, ref: FigureRef) {
  const id = ref.line === undefined ? sheet.cases[ref.case ?? 0]?.lineId : sheet.lineIds[ref.line];
  const at = input.job.lines.findIndex((line) => line.id === id);
  const line = input.job.lines[at];
  return line === undefined ? null : { line, at };
}
