import { givenOptions } from './givenOptions';

type RunArguments =
  | {
      readonly kind: 'usable';
      readonly file: string;
      /** Which run of a copy; null where none is named. */
      readonly runId: string | null;
    }
  | { readonly kind: 'unusable'; readonly why: string };

/** @returns what the run command was asked for, or what is wrong with it in one sentence. */
export function runArguments(words: readonly string[]): RunArguments {
  const read = givenOptions(words, ['--run'], 'npm run -s run -- FILE [--run ID]');
  if (read.kind === 'unusable') return read;
  return { kind: 'usable', file: read.file, runId: read.given.get('--run') ?? null };
}
