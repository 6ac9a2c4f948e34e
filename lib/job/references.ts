import { makeFinding } from '@/lib/findings/makeFinding';
import { jobLinks } from '@/lib/kinds/job/jobLinks';
import type { ReferenceKind } from '@/shared/facts/documentFacts';
import type { Finding, Where } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { changeAt } from './missingRate';

interface Reference {
  readonly kind: ReferenceKind;
  readonly id: string;
  readonly where: Where;
  /** Names of the line and the placement that name it; null where it is the job itself, or the line. */
  readonly of: { readonly line: string | null; readonly placement: string | null };
}

/**
 * DOC-02: the job names something that is not there. Where only one thing could be meant, the button names it.
 *
 * @returns one stop for each name that leads nowhere
 */
export function missingReferences(input: JobInput): readonly Finding[] {
  return referencesOf(input).flatMap((reference) => {
    const candidates = candidatesFor(reference.kind, input);
    if (candidates.some(({ id }) => id === reference.id)) return [];
    const [only, ...others] = candidates;
    return [
      makeFinding({
        id: 'DOC-02',
        severity: 'stop',
        where: reference.where,
        found: reference.id,
        facts: { kind: reference.kind, id: reference.id, ...reference.of },
        fix:
          only === undefined || others.length > 0
            ? null
            : {
                label: 'useOnly',
                facts: { name: only.name },
                changes: changeAt(reference.where, only.id),
              },
      }),
    ];
  });
}

function referencesOf({ job }: JobInput): readonly Reference[] {
  return jobLinks(job).map(({ to: kind, id, path }): Reference => {
    const [, lineAt, , placementAt] = path;
    const line = typeof lineAt === 'number' ? job.lines[lineAt] : undefined;
    const placement = typeof placementAt === 'number' ? line?.placements[placementAt] : undefined;
    if (line === undefined)
      return { kind, id, where: { document: 'job', path }, of: { line: null, placement: null } };
    const where: Where = { document: 'job', path, lineId: line.id };
    return placement === undefined
      ? { kind, id, where, of: { line: line.name, placement: null } }
      : {
          kind,
          id,
          where: { ...where, placementId: placement.id },
          of: { line: line.name, placement: placement.name },
        };
  });
}

interface Candidate {
  readonly id: string;
  readonly name: string;
}

function candidatesFor(kind: ReferenceKind, { workshop, blanks, artworks }: JobInput): readonly Candidate[] {
  switch (kind) {
    case 'printer':
      return workshop.printers;
    case 'sheet':
      return workshop.sheets;
    case 'channel':
      return workshop.channels;
    case 'packaging':
      return workshop.packagings;
    case 'press':
      return workshop.presses;
    case 'blank':
      return Object.entries(blanks).map(([id, { name }]) => ({ id, name }));
    case 'artwork':
      return Object.entries(artworks).map(([id, { name }]) => ({ id, name }));
    default:
      return kind satisfies never;
  }
}
