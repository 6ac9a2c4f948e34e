/** Why a paper could not go out although the device would have kept it. @param error as it was thrown */
export function notIssuedWords(error: unknown): string {
  const why = error instanceof Error ? error.message : String(error);
  return `Something in it is more than a paper can hold, and nothing was changed. Mend it and try again, or report it with this: ${why.slice(0, 300)}`;
}
