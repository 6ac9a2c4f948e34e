import { jobLinks } from '@/lib/kinds/job/jobLinks';
import { isPlainObject } from '@/lib/merging/sameValue';
import type { Job } from '@/shared/schemas/job';
import type { Workshop } from '@/shared/schemas/workshop';

/** Lists of the workshop by the kind of part that jobs name in them. */
export const partLists = {
  printer: 'printers',
  press: 'presses',
  sheet: 'sheets',
  packaging: 'packagings',
  channel: 'channels',
} as const;
type PartKind = keyof typeof partLists;

/** A part of the workshop that jobs name and that is not in it. */
interface MissingPart {
  readonly kind: PartKind;
  readonly id: string;
}

/** A part as the workshop had it once. */
export interface FormerPart extends MissingPart {
  readonly name: string;
  readonly part: unknown;
}

/** @returns the parts that jobs name and the workshop lacks, each once. */
export function missingParts(workshop: Workshop, jobs: readonly Job[]): readonly MissingPart[] {
  const named = jobs.flatMap((job) =>
    jobLinks(job).flatMap(({ to, id }): readonly MissingPart[] =>
      to === 'blank' || to === 'artwork' ? [] : [{ kind: to, id }],
    ),
  );
  const missing = named.filter(({ kind, id }) => !workshop[partLists[kind]].some((part) => part.id === id));
  return [...new Map(missing.map((part) => [`${part.kind} ${part.id}`, part])).values()];
}

/**
 * Looks for parts in what the workshop was once.
 *
 * @param bodies of the workshop, the latest first; those of records that cannot be read as they are
 */
export function formerParts(
  missing: readonly MissingPart[],
  bodies: readonly unknown[],
): readonly FormerPart[] {
  return missing.flatMap((wanted) => {
    const parts = bodies.flatMap((body) => breakListOf(body, wanted.kind));
    const part = parts.find((candidate) => isPlainObject(candidate) && candidate.id === wanted.id);
    const name = isPlainObject(part) ? part.name : undefined;
    return typeof name === 'string' && name !== '' ? [{ ...wanted, name, part }] : [];
  });
}

function breakListOf(body: unknown, kind: PartKind): readonly unknown[] {
  const list = isPlainObject(body) ? body[partLists[kind]] : undefined;
  return Array.isArray(list) ? list : [];
}
