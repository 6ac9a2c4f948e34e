import { makeFinding } from '@/lib/check/makeFinding';
import { changeAt } from '@/lib/check/missingRate';
import type { Finding, Where } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';

export type ReferenceKind = 'printer' | 'sheet' | 'channel' | 'blank' | 'packaging' | 'artwork' | 'press';

interface Reference {
  readonly kind: ReferenceKind;
  readonly id: string;
  readonly where: Where;
  /** What names it, where that is a part of the job. */
  readonly of?: { readonly line: string; readonly placement?: string };
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
  const at = (...path: (string | number)[]): Where => ({ document: 'job', path });
  return [
    { kind: 'printer', id: job.printerId, where: at('printerId') },
    { kind: 'sheet', id: job.sheetId, where: at('sheetId') },
    { kind: 'channel', id: job.channelId, where: at('channelId') },
    ...job.lines.flatMap((line, lineIndex): readonly Reference[] => {
      const onLine = (...path: (string | number)[]): Where => ({
        ...at('lines', lineIndex, ...path),
        lineId: line.id,
      });
      return [
        { kind: 'blank', id: line.blankId, where: onLine('blankId'), of: { line: line.name } },
        ...(line.packagingId === null
          ? []
          : [
              {
                kind: 'packaging' as const,
                id: line.packagingId,
                where: onLine('packagingId'),
                of: { line: line.name },
              },
            ]),
        ...line.placements.flatMap((placement, index): readonly Reference[] => {
          const onPlacement = (field: string): Where => ({
            ...onLine('placements', index, field),
            placementId: placement.id,
          });
          const of = { line: line.name, placement: placement.name };
          return [
            { kind: 'artwork', id: placement.artworkId, where: onPlacement('artworkId'), of },
            { kind: 'press', id: placement.pressId, where: onPlacement('pressId'), of },
          ];
        }),
      ];
    }),
  ];
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
