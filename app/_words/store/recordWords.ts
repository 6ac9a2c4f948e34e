import { findingWords } from '@/app/_words/findings/findingWords';
import type { TextContext } from '@/app/_words/formatter';
import { documentFindings } from '@/lib/findings/documentFindings';
import { isKnownKind } from '@/lib/kinds/draftFacts';
import { kinds } from '@/lib/kinds/kinds';
import type { UnreadableRecord } from '@/lib/stored/openRecord';
import { storedWords } from './storedWords';

/** @returns why a record cannot be read and how it is mended, by the words that every document is told of in. */
export function recordReason(record: UnreadableRecord, context: TextContext): string {
  const kind = isKnownKind(record.kind) ? record.kind : null;
  const current = kind !== null && fieldOf(record.raw, 'version') === kinds[kind].version;
  if (current && record.findings.some(({ code }) => code === 'bodyInvalid')) {
    const value = fieldOf(record.raw, 'body');
    const parsed = kinds[kind].schema.safeParse(value);
    const [first, ...more] = parsed.success
      ? []
      : documentFindings(parsed.error, kind, { id: record.id, value });
    if (first !== undefined) {
      const { sentence, detail } = findingWords(first, context);
      return `${sentence} ${detail}${more.length === 0 ? '' : ` And ${more.length} more.`}`;
    }
  }
  const words = record.findings.map((finding) => storedWords(finding, kind));
  return words.join(' ') || 'Another record has its place.';
}

function fieldOf(part: unknown, key: string): unknown {
  return typeof part === 'object' && part !== null ? Reflect.get(part, key) : undefined;
}
