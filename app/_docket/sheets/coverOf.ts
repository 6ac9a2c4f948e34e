import { paperOfLocale } from '@/app/_priceLists/paperOfLocale';
import {
  coverCopies,
  coverNote,
  coverPictureWords,
  coverPrintDetails,
  coverRollFacts,
  coverRuleWords,
  coverSettings,
  coverSheetHeading,
  coverTopEdge,
  coverTotalWords,
  coverUnder,
  coverWatch,
  coverWords,
} from '@/app/_words/docket/coverWords';
import { sizesWords } from '@/app/_words/docket/sizesWords';
import type { Formatter } from '@/app/_words/formatter';
import type { Cover, CoverSheet } from '@/lib/exports/cover';
import { ownEntry } from '@/lib/job/ownEntry';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import type { JobInput } from '@/shared/schemas/request';
import type { Sheet } from '@/shared/schemas/workshop';
import { namedPrint, printsOn } from './sheetNames';
import { wasteOf } from './wasteOf';

interface CoverOptions {
  readonly input: JobInput;
  readonly paper: Sheet;
  readonly sheets: readonly PlannedSheet[];
  /** Whether the transfers get a line of words in the waste, where it has room. */
  readonly withLine: boolean;
  /** YYYY-MM-DD. */
  readonly today: string;
  readonly formatter: Formatter;
}

/** @returns the cover page of a job's sheets, in words. */
export function coverOf(options: CoverOptions): Cover {
  const { input, paper, sheets, withLine, today, formatter } = options;
  const { job, workshop } = input;
  const printer = workshop.printers.find(({ id }) => id === job.printerId);
  const total = sheets.reduce((sum, { count }) => sum + count, 0);
  const isRoll = paper.form === 'roll';
  const hasStrip = withLine && wasteOf(input, paper, sheets).some(({ strip }) => strip !== null);
  const drawn = coverSheets(options, printer?.marginMm ?? 0, total);
  return {
    paper: paperOfLocale(workshop.locale),
    title: `${job.name}: ${coverWords.banner}`,
    banner: coverWords.banner,
    name: job.name,
    under: coverUnder(workshop.name, formatter.day(today)),
    total: { figure: formatter.number(total, 0), words: coverTotalWords(total, isRoll) },
    settings: {
      heading: coverWords.settings,
      rows: coverSettings({ printer, paper, formatter }),
      rule: coverRuleWords(formatter),
    },
    sheetsHeading: coverWords.sheets,
    sheetsNote: coverNote(
      drawn.some(({ pieces }) => pieces.some(({ isEmpty }) => !isEmpty)),
      drawn.some(({ pieces }) => pieces.some(({ isEmpty }) => isEmpty)),
    ),
    sheets: drawn,
    watch: {
      heading: coverWords.watch,
      sentences: coverWatch({ isVentilated: workshop.room.ventilated, hasStrip }),
    },
    continued: coverWords.continued,
    foot: coverWords.foot,
  };
}

function coverSheets(options: CoverOptions, marginMm: number, total: number): readonly CoverSheet[] {
  const { input, paper, sheets, formatter } = options;
  const keys = keysOf(input, sheets);
  const isRoll = paper.form === 'roll';
  let first = 1;
  return sheets.map((sheet) => {
    const { count, pieces, lengthMm, cutsMm } = sheet;
    const heightMm = lengthMm ?? paper.heightMm;
    const heading = coverSheetHeading({ first, count, of: total, isRoll, formatter });
    first += count;
    return {
      heading,
      copies: coverCopies(count, formatter),
      facts: lengthMm === null ? [] : coverRollFacts(lengthMm, cutsMm, formatter),
      widthMm: paper.widthMm,
      heightMm,
      marginMm,
      pieces: pieces.map((piece) => {
        const { xMm, yMm, widthMm, heightMm: high, turned } = piece;
        const { key, name, artworkId } = namedPrint(input, piece);
        const isEmpty = ownEntry(input.artworks, artworkId)?.picture == null;
        return { xMm, yMm, widthMm, heightMm: high, turned, key: keys.get(key) ?? '', name, isEmpty };
      }),
      cuts: cutsMm.map((atMm) => ({ atMm, words: formatter.length(atMm) })),
      topEdge: coverTopEdge(isRoll),
      prints: printsOnSheet(options, sheet, keys),
    };
  });
}

function printsOnSheet(
  { input, paper, formatter }: CoverOptions,
  { pieces }: PlannedSheet,
  keys: ReadonlyMap<string, string>,
): CoverSheet['prints'] {
  return printsOn(input, pieces).map(({ print, count }) => {
    const artwork = ownEntry(input.artworks, print.artworkId);
    const sizes = print.sizes === null ? 'all other sizes' : sizesWords(print.sizes);
    return {
      key: keys.get(print.key) ?? '',
      name: print.name,
      details: coverPrintDetails(
        {
          count,
          size: formatter.size(print.widthMm, print.heightMm),
          picture: artwork == null ? null : coverPictureWords(artwork),
          item: print.lineName,
          sizes: print.isOnlySize ? null : sizes,
          isMirrored: print.reversed,
          isEmpty: artwork?.picture == null,
          isRoll: paper.form === 'roll',
        },
        formatter,
      ),
    };
  });
}

/** A, B … Z, AA, AB …: the same print has the same letter on every sheet. */
function keysOf(input: JobInput, sheets: readonly PlannedSheet[]): ReadonlyMap<string, string> {
  const keys = new Map<string, string>();
  for (const piece of sheets.flatMap(({ pieces }) => pieces)) {
    const { key } = namedPrint(input, piece);
    if (!keys.has(key)) keys.set(key, letterKey(keys.size));
  }
  return keys;
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

const letterKey = (place: number): string =>
  (place < LETTERS.length ? '' : letterKey(Math.floor(place / LETTERS.length) - 1)) +
  (LETTERS[place % LETTERS.length] ?? '');
