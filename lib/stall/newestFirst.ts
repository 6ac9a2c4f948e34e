/** Orders what was noted, the newest first. Two of one moment are told apart by their ids, which are the same everywhere. */
export const newestFirst = (one: Noted, other: Noted): number =>
  other.at - one.at || (other.id < one.id ? -1 : other.id > one.id ? 1 : 0);

// Helpers

interface Noted {
  readonly id: string;
  /** Ms since 1970. */
  readonly at: number;
}
