import { isPlainObject } from '@/lib/merging/sameValue';
import type { Leaving } from '@/lib/stored/leaving';
import { noonOf } from '@/shared/days';
import { heldVersionsSchema } from './heldVersions';
import { versionSeries } from './versionSeries';

/**
 * Version 2 to 3: versions that went out are papers of their own. Versions that cannot be read stay where they are,
 * so that the list is refused and kept as it was found.
 */
export function priceListWithoutVersions(body: unknown): unknown {
  if (!isPlainObject(body) || !heldVersionsSchema.safeParse(body.versions).success) return body;
  const { versions: _, ...rest } = body;
  return rest;
}

/** The papers that a list of version 2 holds. Nobody knows the hour they went out at, nor on which device. */
export function versionsLeave(body: unknown, { id }: { readonly id: string }): Leaving {
  const held = isPlainObject(body) ? heldVersionsSchema.safeParse(body.versions) : null;
  if (held?.success !== true) return { entries: [], papers: [] };
  return {
    entries: [],
    papers: held.data.map((version) => {
      const number = { count: version.number, letter: null };
      return {
        kind: 'priceListVersion',
        version: 1,
        at: Math.max(0, noonOf(version.issuedOn)),
        body: { ...version, number },
        series: versionSeries(id),
        number,
        about: { kind: 'priceList', id },
      };
    }),
  };
}
