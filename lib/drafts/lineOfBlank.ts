import type { Line } from '@/shared/schemas/job';
import { freeName } from './freeName';

interface BlankOfLine {
  readonly id: string;
  readonly name: string;
}

/**
 * A line made on another blank. Its name follows the blank for as long as nobody has named it otherwise.
 *
 * @param before the name of the blank it was made on; null where that is not known
 * @param otherNames names of the other lines of the job
 */
export function lineOfBlank(
  line: Line,
  before: string | null,
  to: BlankOfLine,
  otherNames: readonly string[],
): Line {
  const name = isNamedAfter(line.name, before) ? freeName(to.name, otherNames) : line.name;
  return { ...line, blankId: to.id, name };
}

// Helpers

/** Names that a line was given and nobody typed. */
const given = /^(First line|Line \d+)$/;

function isNamedAfter(name: string, blank: string | null): boolean {
  if (given.test(name)) return true;
  if (blank === null || !name.startsWith(blank)) return false;
  return /^( \d+)?$/.test(name.slice(blank.length));
}
