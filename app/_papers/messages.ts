/** What the worker that sets papers answers; a fault is told, never swallowed. */
export type PaperReply =
  | { readonly kind: 'written'; readonly bytes: Uint8Array }
  | { readonly kind: 'failed'; readonly why: string };
