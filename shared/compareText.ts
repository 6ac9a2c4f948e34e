/** The order of texts by their code units, which no device's language moves; below 0 where `one` comes first. */
export const compareText = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);
