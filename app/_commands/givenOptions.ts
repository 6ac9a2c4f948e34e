interface Unusable {
  readonly kind: 'unusable';
  readonly why: string;
}

type GivenOptions =
  | {
      readonly kind: 'given';
      readonly file: string;
      /** By name, as `--order`. */
      readonly given: ReadonlyMap<string, string>;
      /** Those that may stand several times, in their order. */
      readonly several: ReadonlyMap<string, readonly string[]>;
    }
  | Unusable;

/**
 * @param words typed behind the command
 * @param options that it knows; each takes a value
 * @param usage how it is typed
 * @param repeatable those of the options that may stand several times
 * @returns the one file and the options it was given, or what is wrong in one sentence
 */
export function givenOptions(
  words: readonly string[],
  options: readonly string[],
  usage: string,
  repeatable: readonly string[] = [],
): GivenOptions {
  const files: string[] = [];
  const given = new Map<string, string>();
  const several = new Map<string, readonly string[]>();
  for (let index = 0; index < words.length; index += 1) {
    const word = words[index] ?? '';
    if (!word.startsWith('--')) {
      files.push(word);
      continue;
    }
    if (!options.includes(word)) return unusable(`${word} is not known: ${usage}`);
    const value = words[index + 1];
    if (value === undefined) return unusable(`${word} needs a value: ${usage}`);
    index += 1;
    if (repeatable.includes(word)) {
      several.set(word, [...(several.get(word) ?? []), value]);
      continue;
    }
    if (given.has(word)) return unusable(`${word} is given twice: ${usage}`);
    given.set(word, value);
  }
  const [file, ...rest] = files;
  if (file === undefined || rest.length > 0) return unusable(`Name one file: ${usage}`);
  return { kind: 'given', file, given, several };
}

export const unusable = (why: string): Unusable => ({ kind: 'unusable', why });
