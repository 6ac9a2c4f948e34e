import type { Bodies } from '@/lib/stored/registry';
import type { Entry, Paper } from '@/shared/schemas/happened';

/** The entries that count, by kind and in the one order. */
export type EntriesByKind<Entries extends Bodies> = {
  readonly [Kind in keyof Entries & string]: readonly Entry<Kind, Entries[Kind]>[];
};

/** A paper, and whether it was taken back after it went out. */
export type ShownPaper<Kind extends string = string, Body = unknown> = Paper<Kind, Body> & {
  readonly withdrawn: boolean;
};

/** What counts and what went out, of every kind, in the one order: reckoned with what was taken back as well. */
export type Happened<Papers extends Bodies, Entries extends Bodies> = readonly (
  | { readonly [Kind in keyof Entries & string]: Entry<Kind, Entries[Kind]> }[keyof Entries & string]
  | { readonly [Kind in keyof Papers & string]: ShownPaper<Kind, Papers[Kind]> }[keyof Papers & string]
)[];

/** The papers by kind and in the order they were issued in. */
export type PapersByKind<Papers extends Bodies> = {
  readonly [Kind in keyof Papers & string]: readonly ShownPaper<Kind, Papers[Kind]>[];
};

/** Stands for this device on what waits before it has counted anything; no device is called so. */
export const WAITING_DEVICE = 'thisdevice';

/** What the id of an entry begins with while it waits; it gets its own once it is written. */
export const WAITING_ID = 'waiting-';
