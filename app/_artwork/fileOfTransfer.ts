/** What a drop or a paste brought. */
export type Brought =
  | { readonly kind: 'file'; readonly file: File }
  | { readonly kind: 'nothing' }
  | { readonly kind: 'several'; readonly count: number };

/** @returns the one file of a drop or a paste. */
export function fileOfTransfer(files: FileList | readonly File[] | null | undefined): Brought {
  const [file, ...more] = Array.from(files ?? []);
  if (file === undefined) return { kind: 'nothing' };
  return more.length === 0 ? { kind: 'file', file } : { kind: 'several', count: more.length + 1 };
}
