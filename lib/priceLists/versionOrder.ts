import { compareText } from '@/shared/compareText';
import type { Paper, PaperNumber } from '@/shared/schemas/happened';

type Numbered = Pick<Paper, 'device' | 'at' | 'number'>;

/** Versions as they are counted: by number, and one number of two devices by their letters. */
export const byNumber = (one: Numbered, other: Numbered): number =>
  one.number.count - other.number.count || compareText(one.number.letter ?? '', other.number.letter ?? '');

/**
 * The version that went out last. On one device the highest number, whatever its clock did; between devices that did
 * not know of each other the later hour, and of one hour the higher number.
 */
export function newestVersion<Of extends Numbered>(versions: readonly Of[]): Of | null {
  const latest = new Map<string, { readonly version: Of; readonly at: number }>();
  for (const version of versions) {
    const device = version.number.letter === null ? '' : version.device;
    const at = version.number.letter === null ? version.at - NOON_TO_FIRST_HOUR_MS : version.at;
    const known = latest.get(device);
    latest.set(device, {
      version: known === undefined || byNumber(known.version, version) <= 0 ? version : known.version,
      at: Math.max(at, known?.at ?? 0),
    });
  }
  const [newest] = [...latest.values()].sort(
    (one, other) => other.at - one.at || byNumber(other.version, one.version),
  );
  return newest?.version ?? null;
}

/** @returns the number a paper of these would be given next; withdrawn ones keep theirs. */
export const nextNumber = (versions: readonly Numbered[], letter: PaperNumber['letter']): PaperNumber => ({
  count: 1 + Math.max(0, ...versions.map(({ number }) => number.count)),
  letter,
});

// Helpers

/**
 * Of versions from before papers had letters the day alone is known, kept as its noon in UTC. They count from when
 * that day begins anywhere, 26 hours sooner, so that what went out later that day comes after them.
 */
const NOON_TO_FIRST_HOUR_MS = 26 * 3_600_000;
