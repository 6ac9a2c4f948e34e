import { jobLinks } from '@/lib/kinds/job/jobLinks';
import { sameValue } from '@/lib/merging/sameValue';
import type { JobInput } from '@/shared/schemas/request';

/** What a job was costed with last: the same object for as long as none of it changes. */
const known = new WeakMap<JobInput['job'], JobInput>();

/** The documents a job names and no others: two hundred jobs are not to send every picture there is to a worker. */
export function namedInput({ asOf, workshop, blanks, artworks, job, ...noted }: JobInput): JobInput {
  const links = jobLinks(job);
  const idsOf = (kind: string) => new Set(links.filter(({ to }) => to === kind).map(({ id }) => id));
  const input: JobInput = {
    asOf,
    workshop,
    blanks: entriesOf(blanks, idsOf('blank')),
    artworks: entriesOf(artworks, idsOf('artwork')),
    job,
    onHand: entriesOf(noted.onHand, idsOf('blank')),
    approvedVersions: entriesOf(noted.approvedVersions, idsOf('artwork')),
  };
  const before = known.get(job);
  if (before !== undefined && isSame(before, input)) return before;
  known.set(job, input);
  return input;
}

/** @returns what a job was asked with last; undefined where it was not. */
export const lastNamedInput = (job: JobInput['job']): JobInput | undefined => known.get(job);

// Helpers

const entriesOf = <Value>(
  from: Readonly<Record<string, Value>>,
  ids: ReadonlySet<string>,
): Record<string, Value> => Object.fromEntries(Object.entries(from).filter(([id]) => ids.has(id)));

const isSame = (one: JobInput, other: JobInput): boolean =>
  one.asOf === other.asOf &&
  one.workshop === other.workshop &&
  hasSameEntries(one.blanks, other.blanks) &&
  hasSameEntries(one.artworks, other.artworks) &&
  sameValue(one.onHand, other.onHand) &&
  sameValue(one.approvedVersions, other.approvedVersions);

function hasSameEntries(
  one: Readonly<Record<string, unknown>>,
  other: Readonly<Record<string, unknown>>,
): boolean {
  const ids = Object.keys(one);
  return ids.length === Object.keys(other).length && ids.every((id) => one[id] === other[id]);
}
