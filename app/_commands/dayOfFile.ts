import { isCopy } from '@/app/_requests/copyOfFile';
import { parseJson } from '@/app/_requests/readBody';
import { daySchema } from '@/shared/schemas/rate';

type DayOfFile =
  | { readonly kind: 'day'; readonly day: string }
  | { readonly kind: 'unusable'; readonly why: string };

/**
 * The day on which a file is asked about: a text may say it as `asOf`, so that what it answers does not age.
 *
 * @param nothing what does not come of a file that cannot be read, as a sentence
 * @returns today where it says none
 */
export function dayOfFile(bytes: Uint8Array, file: string, nothing: string): DayOfFile {
  const today: DayOfFile = { kind: 'day', day: new Date().toISOString().slice(0, 10) };
  if (isArchive(bytes)) return today;
  const text = parseJson(new TextDecoder().decode(bytes));
  if (text.kind === 'notJson') {
    return isCopy(bytes) ? today : { kind: 'unusable', why: `${file} is not JSON: ${text.why}. ${nothing}` };
  }
  const { value } = text;
  const given: unknown = typeof value === 'object' && value !== null ? Reflect.get(value, 'asOf') : undefined;
  if (given === undefined) return today;
  const day = daySchema.safeParse(given);
  return day.success
    ? { kind: 'day', day: day.data }
    : { kind: 'unusable', why: `asOf of ${file} is not a day like 2026-11-25. ${nothing}` };
}

// Helpers

const isArchive = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b;
