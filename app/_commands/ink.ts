import { type MeasuredFile, measureFile } from '@/app/_artwork/measureFile';
import { pictureProblemWords } from '@/app/_words/docket/pictureProblemWords';
import { totalShare } from '@/lib/ink/generateBlack';
import { inkMl } from '@/lib/ink/inkMl';
import { rateCatalogue } from '@/shared/tables/rateCatalogue';
import { inchesFromMm } from '@/shared/units';

/*
 * npm run -s ink -- PICTURE --width-mm N: ink of a picture printed N millimetres wide, at the typical laydown.
 * Exit code 0: measured; 1: the picture or the words of the command cannot be used, said on standard error.
 */
const USAGE = 'Name one picture and the width of its print: npm run -s ink -- PICTURE --width-mm 200';
const MOST_WIDTH_MM = 10_000;

process.exitCode = await run(process.argv.slice(2));

async function run(words: readonly string[]): Promise<number> {
  const asked = readWords(words);
  if (typeof asked === 'string') return unusable(asked);
  const { path, widthMm } = asked;
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
  process.stdout.write(`${JSON.stringify(answer(measured.value, widthMm), null, 2)}\n`);
  return 0;
}

function readWords(words: readonly string[]): string | { readonly path: string; readonly widthMm: number } {
  const flag = words.findIndex((word) => word === '--width-mm' || word.startsWith('--width-mm='));
  const isJoined = words[flag]?.includes('=') ?? false;
  const given = isJoined ? words[flag]?.slice('--width-mm='.length) : words[flag + 1];
  const others = words.filter((_, index) => index !== flag && (isJoined || index !== flag + 1));
  const [path, ...rest] = others;
  if (flag === -1 || given === undefined || path === undefined || rest.length > 0) return USAGE;
  const widthMm = /^\d+(?:\.\d+)?$/.test(given) ? Number(given) : Number.NaN;
  if (!(widthMm > 0 && widthMm <= MOST_WIDTH_MM)) {
    return `The width of the print is ${given}; it must be a number of millimetres above 0, up to ${MOST_WIDTH_MM}.`;
  }
  return { path, widthMm };
}

function answer({ header, pixels, ink }: MeasuredFile, widthMm: number) {
  const { cyan, magenta, yellow, black } = ink.coverage;
  const declared = header.kind === 'raster' && header.density.kind === 'declared' ? header.density : null;
  return {
    pixels,
    /** Pixels an inch the file asks for; null where it does not say. */
    density: declared === null ? null : Math.min(declared.xPpi, declared.yPpi),
    /** Pixels an inch at the width asked for. */
    ppi: pixels.width / inchesFromMm(widthMm),
    coverage: { C: cyan, M: magenta, Y: yellow, K: black },
    heavyShare: ink.heavyShare,
    mL: inkMl({
      total: totalShare(ink.coverage),
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
