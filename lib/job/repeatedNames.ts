import { makeFinding } from '@/lib/findings/makeFinding';
import type { Finding, Where } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';

/**
 * DOC-01: two things go by one name, so nobody could say which is meant: ids, sizes of a blank, sizes of a
 * line, sizes of a placement's prints.
 *
 * @returns a stop at the second of each pair
 */
export function repeatedNames({ job, workshop, blanks }: JobInput): readonly Finding[] {
  const inWorkshop = (
    ['printers', 'presses', 'sheets', 'packagings', 'channels', 'ownRows'] as const
  ).flatMap((list) =>
    repeats(
      workshop[list].map(({ id }) => id),
      (index) => ({ document: 'workshop', path: [list, index, 'id'] }),
    ),
  );
  const inBlanks = Object.entries(blanks).flatMap(([id, blank]) =>
    repeats(
      blank.sizes.map(({ name }) => name),
      (index) => ({ document: 'blank', id, path: ['sizes', index, 'name'] }),
    ),
  );
  const inLines = job.lines.flatMap((line, lineIndex) => {
    const at = (...path: (string | number)[]): Where => ({
      document: 'job',
      path: ['lines', lineIndex, ...path],
      lineId: line.id,
    });
    return [
      ...repeats(
        line.quantities.map(({ size }) => size),
        (index) => at('quantities', index, 'size'),
      ),
      ...repeats(
        line.upCharges.map(({ size }) => size),
        (index) => at('upCharges', index, 'size'),
      ),
      ...line.placements.flatMap(({ id, prints }, index) => {
        const named = prints.flatMap(({ sizes }, print) => (sizes ?? ['']).map((size) => ({ size, print })));
        return repeats(
          named.map(({ size }) => size),
          (entry) => ({
            ...at('placements', index, 'prints', named[entry]?.print ?? 0, 'sizes'),
            placementId: id,
          }),
        );
      }),
    ];
  });
  const lineIds = repeats(
    job.lines.map(({ id }) => id),
    (index) => ({ document: 'job', path: ['lines', index, 'id'] }),
  );
  const everyPlacement = job.lines.flatMap(({ placements }, line) =>
    placements.map(({ id }, placement) => ({ id, line, placement })),
  );
  const placementIds = repeats(
    everyPlacement.map(({ id }) => id),
    (index) => {
      const at = everyPlacement[index];
      return {
        document: 'job',
        path: ['lines', at?.line ?? 0, 'placements', at?.placement ?? 0, 'id'],
      };
    },
  );
  const rowIds = repeats(
    job.ownRows.map(({ id }) => id),
    (index) => ({ document: 'job', path: ['ownRows', index, 'id'] }),
  );
  return [...inWorkshop, ...inBlanks, ...lineIds, ...placementIds, ...inLines, ...rowIds];
}

function repeats(names: readonly string[], whereOf: (index: number) => Where): readonly Finding[] {
  return names.flatMap((name, index) =>
    names.indexOf(name) === index
      ? []
      : [
          makeFinding({
            id: 'DOC-01',
            severity: 'stop',
            where: whereOf(index),
            variant: 'repeated',
            found: name,
            facts: { name },
          }),
        ],
  );
}
