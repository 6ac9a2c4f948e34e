import { givenOptions } from './givenOptions';

type StallArguments =
  | {
      readonly kind: 'usable';
      readonly file: string;
      /** Which stall day of a copy; null where none is named. */
      readonly dayId: string | null;
      /** Ranges whose numbers the maker keeps beside the advice for the others, by id or name. */
      readonly hold: readonly string[];
    }
  | { readonly kind: 'unusable'; readonly why: string };

const USAGE = 'npm run -s stall -- FILE [--day ID] [--hold RANGE]…';

/** @returns what the stall command was asked for, or what is wrong with it in one sentence. */
export function stallArguments(words: readonly string[]): StallArguments {
  const read = givenOptions(words, ['--day', '--hold'], USAGE, ['--hold']);
  if (read.kind === 'unusable') return read;
  const { file, given, several } = read;
  return { kind: 'usable', file, dayId: given.get('--day') ?? null, hold: several.get('--hold') ?? [] };
}
