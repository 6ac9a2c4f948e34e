import type { Formatter } from '@/app/_words/formatter';
import type { CopyLacks, LackingFile, NotACopy, RefusedEntry } from '@/lib/copies/copy';
import type { UnreadableRecord } from '@/lib/stored/openRecord';
import { bytesWords } from './bytesWords';

type LooksLike = Extract<NotACopy, { code: 'notOurs' }>['looksLike'];

const looks: Readonly<Record<LooksLike, string>> = {
  empty: 'It is empty: it may not have been saved to its end. Save or send it again.',
  encryptedZip: 'It is a zip locked with a password. Unlock it, and choose what was in it.',
  otherZip:
    'It is a zip of something else. Should the copy lie inside it, unpack it first and choose the copy.',
  otherJson: 'It holds data of something else.',
  picture: 'It is a picture. Pictures are brought in with a job, where the print is.',
  pdf: 'It is a PDF. Papers are made from what is kept here, and cannot be read back.',
  other: 'Choose the file as it was saved from here, with .zip or .json at the end of its name.',
};

/** @returns why a file is no copy, and what to do; the name of the file stands before it. */
export function notACopyWords(why: NotACopy, formatter: Pick<Formatter, 'number'>): string {
  switch (why.code) {
    case 'notOurs':
      return `is no copy made here. ${looks[why.looksLike]}`;
    case 'newerFormat':
      return 'was written by a newer version of the app. Reload the page to get that version, then choose the file again.';
    case 'tooLarge':
      return `is ${bytesWords(why.bytes, formatter)}; a copy can be ${bytesWords(why.most, formatter)} at most.`;
    case 'nothingWhole':
      return 'is a copy, but so damaged that nothing in it can be read. Save or send it again, or choose an earlier copy.';
    case 'notReadable':
      return 'could not be read from the device. Put it where this browser can read it, such as the downloads, and choose it again.';
    default:
      return why satisfies never;
  }
}

/** Sentences about single files; the rest is counted. */
const MOST_NAMED = 3;

/** @returns whether records are missing, or may be: then it must not take the place of everything. */
export const lacksRecords = ({ records, endsEarly }: CopyLacks): boolean =>
  records.of === null || records.found < records.of || endsEarly;

/** @returns how much of a damaged copy could be read, to stand above all else; null where every record was. */
export function damageWords(
  { records: { found, of }, endsEarly }: CopyLacks,
  formatter: Pick<Formatter, 'count' | 'number'>,
): string | null {
  if (of === null) return `Part of it could be read: ${formatter.count(found, 'record')}.`;
  if (found < of) {
    return `${shareWords(found / of)} of it could be read: ${formatter.number(found)} of ${formatter.count(of, 'record')}.`;
  }
  return endsEarly ? 'Its end is missing, though all its records could be read.' : null;
}

/**
 * @param brings whether anything of it would come in
 * @returns what a copy should hold and does not, a sentence a kind of lack; none where it is whole
 */
export function lacksWords(
  lacks: CopyLacks,
  brings: boolean,
  formatter: Pick<Formatter, 'count' | 'number'>,
): readonly string[] {
  const { records, endsEarly } = lacks;
  const sentences: string[] = [];
  const isShort = records.of !== null && records.found < records.of;
  if (endsEarly) sentences.push('The file is cut short: it was not fetched or sent whole.');
  if (isShort && brings) {
    sentences.push('What could be read can be brought in beside what is here; the rest could not be read.');
  }
  for (const why of ['missing', 'damaged', 'tooLarge', 'leftOut'] as const) {
    const files = lacks.files.filter((file) => file.why === why);
    if (files.length > 0)
      sentences.push(`${namesOf(files, formatter)} ${fileLacks(why, files.length === 1)}`);
  }
  if (lacks.refused.length > 0) sentences.push(refusedWords(lacks.refused, formatter));
  return sentences;
}

/** Whether a version to come can read what this one cannot: a damaged record no version can. */
export const isOfNewer = ({ findings }: Pick<UnreadableRecord, 'findings'>): boolean =>
  findings.some(({ code }) => code === 'newerVersion' || code === 'unknownKind');

/** @returns that a newer version made some of a copy, and what to do; null where none did. */
export function newerRecordsWords(
  unreadable: readonly Pick<UnreadableRecord, 'findings'>[],
  formatter: Pick<Formatter, 'count'>,
): string | null {
  const newer = unreadable.filter(isOfNewer).length;
  if (newer === 0) return null;
  return `${formatter.count(newer, 'record')} in it ${newer === 1 ? 'was' : 'were'} written by a newer version of the app, and this one cannot show ${newer === 1 ? 'it' : 'them'}. Reload the page to get that version, then choose the file again.`;
}

/** @returns which files could not be put into a copy that was just made. */
export function notInCopyWords(files: readonly LackingFile[], formatter: Pick<Formatter, 'number'>): string {
  const isOne = files.length === 1;
  return `${namesOf(files, formatter)} ${isOne ? 'is' : 'are'} not in it: no longer here, or too large for one file. ${isOne ? 'Its figures are; keep the file itself' : 'Their figures are; keep the files themselves'} elsewhere.`;
}

// Helpers

function shareWords(share: number): string {
  if (share === 0.5) return 'Half';
  if (share > 0.45 && share < 0.55) return 'About half';
  return share < 0.5 ? 'Less than half' : share < 0.9 ? 'More than half' : 'Most';
}

function fileLacks(why: LackingFile['why'], isOne: boolean): string {
  switch (why) {
    case 'missing':
      return `${isOne ? 'is' : 'are'} named but not in it: the figures come in, the ${isOne ? 'file does' : 'files do'} not.`;
    case 'damaged':
      return `${isOne ? 'is' : 'are'} damaged in it and left out; the figures come in.`;
    case 'tooLarge':
      return `${isOne ? 'is' : 'are'} too large to be taken; the figures come in.`;
    case 'leftOut':
      return `${isOne ? 'was' : 'were'} not there any more where the copy was made.`;
    default:
      return why satisfies never;
  }
}

function namesOf(named: readonly { readonly name: string }[], formatter: Pick<Formatter, 'number'>): string {
  const names = named.slice(0, MOST_NAMED).map(({ name }) => `“${name}”`);
  const more = named.length - names.length;
  return more > 0 ? `${names.join(', ')} and ${formatter.number(more)} more` : names.join(', ');
}

function refusedWords(refused: readonly RefusedEntry[], formatter: Pick<Formatter, 'number'>): string {
  const climbs = refused.some(({ why }) => why === 'climbs');
  const one = refused.length === 1;
  return `${namesOf(refused, formatter)} in it ${one ? 'was' : 'were'} not made here and ${one ? 'is' : 'are'} not taken.${climbs ? ' Somebody changed the file so that it would write where it should not: be careful where it came from.' : ''}`;
}
