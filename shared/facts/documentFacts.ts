import type { Plain, Variant } from './findingCase';

/** What the field holds; empty where that has no short form. */
interface Found {
  readonly found: string;
}

/** Facts of the findings about documents and what they name. */
export interface DocumentFacts {
  'DOC-01':
    | Variant<'missing', { readonly expected: string }>
    | Variant<'wrongType', Found & { readonly expected: string; readonly received: string }>
    | Variant<'notWhole', Found>
    /** `open` is 1 where the limit itself is too small as well. */
    | Variant<'tooSmall', Found & { readonly limit: number; readonly open: 0 | 1 }>
    | Variant<'tooLarge', Found & { readonly limit: number }>
    | Variant<'tooShort' | 'tooLong' | 'tooFew' | 'tooMany', { readonly limit: number }>
    | Variant<'badChoice', Found & { readonly allowed: string }>
    | Variant<'badForm', Found & { readonly form: string }>
    | Variant<'unknownKey' | 'badKey', { readonly key: string }>
    /** A field that stands elsewhere now; `to` is its place in the file. */
    | Variant<'movedKey', { readonly key: string; readonly to: string }>
    | Variant<'refused', Found & { readonly reason: string }>
    | Variant<'more', { readonly count: number }>
    | Variant<'repeated', { readonly name: string }>;
  /** `line` and `placement` are the names of the parts that name it, null where it is the job itself, or the line. */
  'DOC-02': Plain<{
    readonly kind: ReferenceKind;
    readonly id: string;
    readonly line: string | null;
    readonly placement: string | null;
  }>;
}

/** Things a job names by their id. */
export type ReferenceKind = 'printer' | 'sheet' | 'channel' | 'blank' | 'packaging' | 'artwork' | 'press';
