/** What an operation that can go wrong in an expected way gives back. */
export type Result<Value, Problem> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: Problem };

export const ok = <Value>(value: Value): Result<Value, never> => ({ ok: true, value });
export const failed = <Problem>(problem: Problem): Result<never, Problem> => ({
  ok: false,
  problem,
});
