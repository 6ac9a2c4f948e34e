import { strFromU8 } from 'fflate';
import { isPlainObject } from '@/lib/merging/sameValue';
import { joinedBytes } from '@/lib/picture/joinedBytes';
import { type CopyRecord, lineObject, recordOf } from './copyRecords';
import { COPY_FORMAT } from './copySchemas';
import { parsedJson } from './parsedJson';

/** What stands in the text of a copy, before anything of it has been read by a schema. */
export interface CopyText {
  /** Null where the first line is not whole. */
  readonly head: Readonly<Record<string, unknown>> | null;
  readonly records: readonly CopyRecord[];
}

/** Takes a text of one record a line in pieces; what is no whole line is left out. */
export function lineReader(): {
  readonly add: (piece: Uint8Array) => void;
  /** @param isSound whether the text is known to be what was written: then lines need no check of their own */
  readonly end: (isSound: boolean) => CopyText;
} {
  let rest: readonly Uint8Array[] = [];
  let head: { readonly value: Readonly<Record<string, unknown>>; readonly isChecked: boolean } | null = null;
  const records: CopyRecord[] = [];

  const takeLine = (bytes: readonly Uint8Array[]): void => {
    const line = lineObject(strFromU8(joinedBytes(bytes)));
    if (line === null) return;
    if (line.value.format === COPY_FORMAT) {
      head ??= line;
      // Somebody's program wrote all of it on one line.
      for (const within of recordsWithin(line.value)) records.push(within);
      return;
    }
    const record = recordOf(line.value, line.isChecked);
    if (record !== null) records.push(record);
  };

  return {
    add: (piece) => {
      let from = 0;
      for (;;) {
        const end = piece.indexOf(NEW_LINE, from);
        if (end < 0) break;
        takeLine([...rest, piece.subarray(from, end)]);
        rest = [];
        from = end + 1;
      }
      if (from < piece.length) rest = [...rest, piece.slice(from)];
    },
    end: (isSound) => {
      takeLine(rest);
      rest = [];
      return {
        head: head !== null && (isSound || head.isChecked) ? head.value : null,
        records: records.filter(({ isChecked }) => isSound || isChecked),
      };
    },
  };
}

/** Reads a text that somebody laid out otherwise; null where it is no copy. */
export function wholeText(text: string): CopyText | null {
  const value = parsedJson(text);
  if (!isPlainObject(value) || value.format !== COPY_FORMAT) return null;
  return { head: value, records: recordsWithin(value) };
}

const recordsWithin = (value: Readonly<Record<string, unknown>>): readonly CopyRecord[] =>
  Object.values(value)
    .flatMap((list): readonly unknown[] => (Array.isArray(list) ? list : []))
    .flatMap((item) => recordOf(item, false) ?? []);

const NEW_LINE = 10;
