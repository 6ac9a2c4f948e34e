/** What an operation that can go wrong in an expected way gives back. */
export type Result<Value, Trouble> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly trouble: Trouble };

export const ok = <Value>(value: Value): Result<Value, never> => ({ ok: true, value });
export const failed = <Trouble>(trouble: Trouble): Result<never, Trouble> => ({ ok: false, trouble });
