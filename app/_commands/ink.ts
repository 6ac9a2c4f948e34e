import { type MeasuredFile, measureFile } from '@/app/_artwork/measureFile';
import { pictureProblemWords } from '@/app/_words/docket/pictureProblemWords';
import { totalShare, withBlackShare } from '@/lib/ink/generateBlack';
import { heavyShareOf } from '@/lib/ink/heavyShareOf';
import { inkMl } from '@/lib/ink/inkMl';
import { rateCatalogue } from '@/shared/tables/rateCatalogue';
import { TYPICAL_BLACK_SHARE } from '@/shared/tables/typicalRates';
import { inchesFromMm } from '@/shared/units';

/*
 * npm run -s ink -- PICTURE --width-mm N [--black-share PERCENT]: ink of a picture printed N millimetres wide, at the
 * typical laydown, where the printer prints that much of the grey with black; without it the typical share.
 * Exit code 0: measured; 1: the picture or the words of the command cannot be used, said on standard error.
 */
const USAGE =
  'Name one picture and the width of its print: npm run -s ink -- PICTURE --width-mm 200 [--black-share 50]';
const MOST_WIDTH_MM = 10_000;

process.exitCode = await run(process.argv.slice(2));

async function run(words: readonly string[]): Promise<number> {
  const asked = readWords(words);
  if (typeof asked === 'string') return unusable(asked);
  const { path, widthMm, blackShare } = asked;
  let measured: Awaited<ReturnType<typeof measureFile>>;
  try {
    measured = await measureFile(path, widthMm);
  } catch (error) {
    return unusable(`${path} cannot be read: ${error instanceof Error ? error.message : String(error)}.`);
  }
  if (!measured.ok) {
    const { sentence, detail } = pictureProblemWords(measured.problem, 'en');
    return unusable(`${path}: ${sentence} ${detail}`);
  }
  process.stdout.write(`${JSON.stringify(answer(measured.value, widthMm, blackShare), null, 2)}\n`);
  return 0;
}

interface Asked {
  readonly path: string;
  readonly widthMm: number;
  readonly blackShare: number;
}

function readWords(words: readonly string[]): string | Asked {
  const width = takeFlag(words, '--width-mm');
  const black = takeFlag(width.rest, '--black-share');
  const [path, ...rest] = black.rest;
  if (width.value === null || path === undefined || rest.length > 0) return USAGE;
  const widthMm = plainNumber(width.value);
  if (!(widthMm > 0 && widthMm <= MOST_WIDTH_MM)) {
    return `The width of the print is ${width.value}; it must be a number of millimetres above 0, up to ${MOST_WIDTH_MM}.`;
  }
  const percent = black.value === null ? 100 * TYPICAL_BLACK_SHARE : plainNumber(black.value);
  if (!(percent <= 100)) {
    return `The share of the grey printed with black is ${black.value}; it must be a per cent from 0 to 100.`;
  }
  return { path, widthMm, blackShare: percent / 100 };
}

/** A flag with its value, as `--flag value` or `--flag=value`, and the words without it. */
function takeFlag(
  words: readonly string[],
  flag: string,
): { readonly value: string | null; readonly rest: readonly string[] } {
  const at = words.findIndex((word) => word === flag || word.startsWith(`${flag}=`));
  if (at === -1) return { value: null, rest: words };
  const isJoined = words[at] !== flag;
  const value = isJoined ? words[at]?.slice(flag.length + 1) : (words[at + 1] ?? '');
  return {
    value: value ?? '',
    rest: words.filter((_, index) => index !== at && (isJoined || index !== at + 1)),
  };
}

function plainNumber(text: string): number {
  return /^\d+(?:\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
}

function answer({ header, pixels, ink }: MeasuredFile, widthMm: number, blackShare: number) {
  const inks = withBlackShare(ink.coverage, blackShare);
  const { cyan, magenta, yellow, black } = inks;
  const declared = header.kind === 'raster' && header.density.kind === 'declared' ? header.density : null;
  return {
    pixels,
    /** Pixels an inch the file asks for; null where it does not say. */
    density: declared === null ? null : Math.min(declared.xPpi, declared.yPpi),
    /** Pixels an inch at the width asked for. */
    ppi: pixels.width / inchesFromMm(widthMm),
    coverage: { C: cyan, M: magenta, Y: yellow, K: black },
    blackShare,
    heavyShare: heavyShareOf({ heavyShare: ink.heavyShare, grey: ink }, blackShare),
    mL: inkMl({
      total: totalShare(inks),
      widthMm,
      heightMm: (widthMm * pixels.height) / pixels.width,
      laydownMlPerIn2: rateCatalogue.laydown.typical,
      loss: rateCatalogue.inkLoss.typical,
    }),
    ...(header.kind === 'raster' && header.isAnimated ? { note: 'The first frame was used.' } : {}),
  };
}

function unusable(why: string): number {
  process.stderr.write(`${why}\n`);
  return 1;
}
