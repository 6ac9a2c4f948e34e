import { documentRegistry } from '@/app/_store/documentRegistry';
import { findingWords } from '@/app/_words/findings/findingWords';
import type { TextContext } from '@/app/_words/formatter';
import { documentFindings } from '@/lib/findings/documentFindings';
import type { UnreadableRecord } from '@/lib/stored/readDocument';
import { documentKinds } from '@/shared/schemas/stored';
import { storedWords } from './storedWords';

/** What the maker calls a record that cannot be read: the name in it where one can be made out, else its id. */
export function recordName({ id, raw }: UnreadableRecord): string {
  const name = fieldOf(fieldOf(raw, 'body'), 'name');
  return typeof name === 'string' && name.trim() !== '' ? name.trim() : id;
}

/** @returns why a record cannot be read and how it is mended, by the words that every document is told of in. */
export function recordReason(record: UnreadableRecord, context: TextContext): string {
  const kind = documentKinds.find((known) => known === record.kind);
  const current = kind !== undefined && fieldOf(record.raw, 'version') === documentRegistry[kind].version;
  if (current && record.findings.some(({ code }) => code === 'bodyInvalid')) {
    const value = fieldOf(record.raw, 'body');
    const parsed = documentRegistry[kind].schema.safeParse(value);
    const [first, ...more] = parsed.success
      ? []
      : documentFindings(parsed.error, kind, { id: record.id, value });
    if (first !== undefined) {
      const { sentence, detail } = findingWords(first, context);
      return `${sentence} ${detail}${more.length === 0 ? '' : ` And ${more.length} more.`}`;
    }
  }
  const words = record.findings.map((finding) => storedWords(finding, kind ?? null));
  return words.join(' ') || 'Another record has its place.';
}

function fieldOf(part: unknown, key: string): unknown {
  return typeof part === 'object' && part !== null ? Reflect.get(part, key) : undefined;
}
