import { type Wording, wording } from '@/app/_words/findings/wording';
import type { PictureProblem, SvgDanger, SvgLoad } from '@/lib/picture/pictureProblem';
import { formatNumber } from '@/shared/formatNumber';

const formatWords = { png: 'PNG', jpeg: 'JPEG', webp: 'WebP', gif: 'GIF', svg: 'SVG' } as const;
const READABLE = 'Save it as PNG, JPEG, WebP or SVG.';

const otherWays: Readonly<Record<string, string>> = {
  'HEIC photo': 'Open it in the photo app it comes from and export it as JPEG or PNG.',
  film: 'Save the one frame of it that is to be printed as PNG.',
};

/** What is said of a picture that is not taken: what is wrong, then the way out. */
export function pictureProblemWords(problem: PictureProblem, locale: string): Wording {
  const number = (value: number) => formatNumber(value, locale, { maxDecimals: 0 });
  const size = (side: { readonly width: number; readonly height: number }) =>
    `${number(side.width)} × ${number(side.height)} px`;
  switch (problem.kind) {
    case 'empty':
      return wording('The file is empty.', 'It may not have been saved or sent whole: get it again.');
    case 'tooManyBytes':
      return wording(
        `The file holds ${megabytes(problem.bytes, locale)}; at most ${megabytes(problem.most, locale)} are read.`,
        'Save it as JPEG or as PNG with 8 bits a channel, at the size it is printed.',
      );
    case 'notAPicture':
      return wording(
        `The file is not a picture, whatever its name says (it begins with ${problem.begins}).`,
        `Open it in the program it comes from. ${READABLE}`,
      );
    case 'otherFormat':
      return wording(
        `The file is of the kind ${problem.format}, which is not read here.`,
        otherWays[problem.format] ?? READABLE,
      );
    case 'cutShort':
      return wording(
        `The ${formatWords[problem.format]} file ends before its picture does, after ${number(problem.bytes)} bytes.`,
        'It was not sent or copied whole: get it again.',
      );
    case 'damaged':
      return wording(
        `The ${formatWords[problem.format]} file is damaged (${problem.part}).`,
        'Open it in a picture program and save it anew, or get it again.',
      );
    case 'tooLong':
      return wording(
        `The picture is ${size(problem)}; at most ${number(problem.mostSidePx)} px a side are read.`,
        'Save it at the size it is printed: 300 px an inch are plenty.',
      );
    case 'tooManyPixels':
      return wording(
        `The picture is ${size(problem)}; at most ${number(problem.most / 1e6)} million pixels are read.`,
        'Save it at the size it is printed: 300 px an inch are plenty.',
      );
    case 'tooSmall':
      return wording(
        `The picture is ${size(problem)}: there is nothing in it to print.`,
        'It may be a placeholder from a web page. Ask for the picture itself.',
      );
    case 'cmyk':
      return wording(
        `The JPEG holds four printing inks (CMYK, ${problem.marker === 'adobe' ? 'marked by Adobe' : 'without a marker'}), whose colours depend on a press this printer is not.`,
        'Open it in a picture program, turn it into sRGB and save it as PNG or JPEG.',
      );
    case 'oddCoding':
      return wording(
        `The JPEG is packed in a way browsers do not read (${codingWords[problem.coding]}).`,
        'Open it in a picture program and save it as an ordinary JPEG or as PNG.',
      );
    case 'svgUnsafe':
      return wording(
        `The SVG holds ${dangerWords[problem.found]}, which no picture needs: ${problem.text}`,
        'Save it as plain SVG with pictures inside the file and text as outlines, or as PNG.',
      );
    case 'svgTooMuch':
      return wording(
        loadWords(problem.load, number),
        'Drawing it would stop the page. Save it as PNG at the size it is printed, 300 px an inch.',
      );
    case 'svgSize':
      return wording(
        problem.state === 'none'
          ? `The SVG does not say what shape it has${problem.given === '' ? '' : ` (${problem.given})`}.`
          : `The SVG says its size is ${problem.state} (${problem.given}).`,
        'Give it a width and a height or a viewBox, or save it as PNG at the size it is printed.',
      );
    case 'cannotDecode':
      return wording(
        `The ${formatWords[problem.format]} picture could not be unpacked${problem.why === '' ? '' : `: ${problem.why}`}.`,
        'Open it in a picture program and save it anew, or get it again.',
      );
    case 'sizeDiffers':
      return wording(
        `The file says the picture is ${size(problem.declared)}, but it holds ${size(problem.decoded)}.`,
        'Open it in a picture program and save it anew.',
      );
    default:
      return problem satisfies never;
  }
}

const codingWords = {
  lossless: 'lossless',
  arithmetic: 'arithmetic coding',
  moreThan8Bits: 'more than 8 bits a channel',
} as const;

const dangerWords: Readonly<Record<SvgDanger, string>> = {
  script: 'a script',
  handler: 'a script that waits for a touch',
  embedded: 'another document',
  outside: 'a reference to something outside the file',
  entity: 'names that stand for other text',
};

/** What is too much to draw; the largest count is only the end of counting. */
function loadWords(load: SvgLoad, number: (value: number) => string): string {
  if (load.what === 'loop') return `The SVG draws “${load.name}” inside itself, without an end.`;
  const count = load.count >= 1e12 ? `over ${number(1e12)}` : number(load.count);
  const most = number(load.most);
  switch (load.what) {
    case 'elements':
      return `The SVG has more than ${most} elements, which are too many to draw.`;
    case 'shapes':
      return `The SVG has ${count} shapes to draw; at most ${most} are drawn.`;
    case 'copies':
      return `The SVG draws ${count} copies of its own parts; at most ${most} are drawn.`;
    case 'effects':
      return `The SVG has ${count} masks, filters and see-through groups to draw; at most ${most} are drawn.`;
    default:
      return load satisfies never;
  }
}

const megabytes = (bytes: number, locale: string) =>
  `${formatNumber(bytes / 1e6, locale, { maxDecimals: bytes < 1e7 ? 1 : 0 })} MB`;
