import { artwork } from './artwork/descriptor';
import { blank } from './blank/descriptor';
import { job } from './job/descriptor';
import { priceList } from './priceList/descriptor';
import { workshop } from './workshop/descriptor';

/** Every kind of document that is kept, under the name its records bear. A new kind is a folder and a line here. */
export const kinds = { workshop, blank, artwork, job, priceList } as const;

export type DocumentKind = keyof typeof kinds;

/** The body of a kind. */
export type Body<Kind extends DocumentKind> = ReturnType<(typeof kinds)[Kind]['schema']['parse']>;

export type DocumentBodies = { readonly [Kind in DocumentKind]: Body<Kind> };

/** @returns whether a record's kind is one that is known here. */
export const isKnownKind = (kind: string | null): kind is DocumentKind =>
  kind !== null && Object.hasOwn(kinds, kind);
