import { isPlainObject } from '@/lib/merging/sameValue';
import { sha256OfValue } from '@/lib/stored/sha256';
import type { StandardWork } from '@/shared/schemas/making/runPapers';
import type { JobInput } from '@/shared/schemas/request';

/**
 * What a job is reckoned from, as one SHA-256 over its canonical text: the job, its blanks and artworks, the machines,
 * paper, packaging and way of selling it names, the rates and own rows of the workshop. Not the day it is asked on, what
 * lies at home, how far the job has come, or the day on which a rate was typed or confirmed: no sum changes by them.
 */
export function jobDigest({ job, blanks, artworks, workshop }: JobInput): string {
  const { state: _state, archivedOn: _archived, customer: _customer, wantedOn: _wanted, ...reckoned } = job;
  const placements = job.lines.flatMap((line) => line.placements);
  const used = <Of extends { readonly id: string }>(parts: readonly Of[], ids: readonly (string | null)[]) =>
    parts.filter(({ id }) => ids.includes(id));
  const named = <Of>(documents: Readonly<Record<string, Of>>, ids: readonly string[]) =>
    [...new Set(ids)].sort().map((id) => [id, documents[id] ?? null]);
  return sha256OfValue(
    withoutDays({
      job: reckoned,
      blanks: named(
        blanks,
        job.lines.map(({ blankId }) => blankId),
      ),
      artworks: named(
        artworks,
        placements.map(({ artworkId }) => artworkId),
      ),
      currency: workshop.currency,
      rates: workshop.rates,
      ownRows: workshop.ownRows,
      printers: used(workshop.printers, [job.printerId]),
      sheets: used(workshop.sheets, [job.sheetId]),
      channels: used(workshop.channels, [job.channelId]),
      presses: used(
        workshop.presses,
        placements.map(({ pressId }) => pressId),
      ),
      packagings: used(
        workshop.packagings,
        job.lines.map(({ packagingId }) => packagingId),
      ),
    }),
  );
}

/** @returns whether anything the standard was reckoned from has changed since; the frozen standard stays as it is */
export const jobChangedSince = ({ sha256 }: Pick<StandardWork, 'sha256'>, input: JobInput): boolean =>
  jobDigest(input) !== sha256;

// Helpers

/** Rates are written with their day and whence they came: only amount and unit are in a sum. */
function withoutDays(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutDays);
  if (!isPlainObject(value)) return value;
  const isRate = 'value' in value && 'unit' in value && 'date' in value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key, part]) => part !== undefined && !(isRate && (key === 'date' || key === 'origin')))
      .map(([key, part]) => [key, withoutDays(part)]),
  );
}
