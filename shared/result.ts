/** What an operation that can go wrong in an expected way gives back. */
export type Result<Value, ErrorScreen> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: ErrorScreen };

export const ok = <Value>(value: Value): Result<Value, never> => ({ ok: true, value });
export const failed = <ErrorScreen>(problem: ErrorScreen): Result<never, ErrorScreen> => ({
  ok: false,
  problem,
});
