import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Leaving, LeavingEntry, LeavingPaper } from './leaving';
import { sha256OfValue } from './sha256';

/** What left a document, as the entries and papers it is kept as from then on. */
export interface LeftRecords {
  readonly entries: readonly Entry[];
  readonly papers: readonly Paper[];
}

/** What leaves a document that holds nothing but what belongs to it. */
export const nothingLeft: LeftRecords = { entries: [], papers: [] };

/**
 * Makes entries and papers of what leaves a document. Their ids come of what they say and where it stood, so that the
 * same record, read again or from an older copy, gives the same ones. Two that say the same stay two.
 */
export function leavingRecords(
  from: { readonly kind: string; readonly id: string },
  leaving: readonly Leaving[],
): LeftRecords {
  const told = new Map<string, number>();
  const writtenOnce = ({ kind, version, at, body }: LeavingEntry) => {
    const said = sha256OfValue({ from: { kind: from.kind, id: from.id }, kind, at, body });
    const before = told.get(said) ?? 0;
    told.set(said, before + 1);
    const device = (before === 0 ? said : sha256OfValue([said, before])).slice(0, DEVICE_LETTERS);
    return { id: `${device}-1`, kind, version, device, count: 1, at, body };
  };
  const papers = leaving
    .flatMap((part) => part.papers)
    .map(
      (paper: LeavingPaper): Paper => ({
        ...writtenOnce(paper),
        series: paper.series,
        number: paper.number,
        about: paper.about,
        sha256: sha256OfValue(paper.body),
        file: null,
      }),
    );
  return {
    entries: [
      ...leaving.flatMap((part) => part.entries).map(writtenOnce),
      ...papers.map(({ id, at }) => writtenOnce({ kind: 'issuing', version: 1, at, body: { paperId: id } })),
    ],
    papers,
  };
}

/** Ten bytes of a hash stand for the device that nobody knows any more. */
const DEVICE_LETTERS = 20;
