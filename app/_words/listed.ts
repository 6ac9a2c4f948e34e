const SHOWN = 8;

/** @returns texts as a sentence names them: “A, B and C”, the first of many and how many more there are. */
export function listed(texts: readonly string[]): string {
  const more = texts.length - SHOWN;
  const parts = more > 1 ? [...texts.slice(0, SHOWN), `${more} more`] : texts;
  const last = parts.at(-1) ?? '';
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(', ')} and ${last}`;
}
