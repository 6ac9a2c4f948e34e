import { failed, ok, type Result } from '@/shared/result';
import type { Parting } from './leaving';
import type { KindReading } from './registry';
import { type StoredFinding, schemaIssues } from './storedFinding';

/**
 * Brings a body up to the known version, one version at a time, and parses it.
 *
 * @param version version of the shape the body was written in, from 1
 * @param parts called with what tells what leaves, and the body before it does
 * @returns the parsed body, or `newerVersion`, `stepMissing`, `stepFailed`, `bodyInvalid`
 */
export function readBody<Body>(
  body: unknown,
  version: number,
  entry: KindReading<Body>,
  parts?: (parting: Parting, body: unknown) => void,
): Result<Body, StoredFinding> {
  if (version > entry.version) return failed({ code: 'newerVersion', version, known: entry.version });
  let current = body;
  for (let from = version; from < entry.version; from += 1) {
    const step = entry.steps[from];
    if (step === undefined) return failed({ code: 'stepMissing', fromVersion: from });
    const parting = entry.partings?.[from];
    try {
      if (parting !== undefined) parts?.(parting, current);
      current = step(current);
    } catch (error) {
      return failed({ code: 'stepFailed', fromVersion: from, message: messageOf(error) });
    }
  }
  const parsed = entry.schema.safeParse(current);
  return parsed.success
    ? ok(parsed.data)
    : failed({ code: 'bodyInvalid', issues: schemaIssues(parsed.error) });
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
