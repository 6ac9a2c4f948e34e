import type { ZodType } from 'zod';
import type { DocumentKind, Stored } from '@/shared/schemas/stored';

/** What the body of each kind of document is. */
export type Bodies = Readonly<Record<DocumentKind, unknown>>;

/** Takes a body of one version to the next. Pure; it may throw on a body it cannot take. */
export type MigrationStep = (body: unknown) => unknown;

/** How one kind of document is read. */
export type KindEntry<Body> = {
  /** Version of the shape that `schema` describes. */
  readonly version: number;
  /** Strict schema of that version. Any new, renamed or dropped key is a new version. */
  readonly schema: ZodType<Body>;
  /** `steps[n]` takes version n to n + 1; there is one for every n from 1 to `version` − 1. */
  readonly steps: Readonly<Record<number, MigrationStep>>;
  /** Id of the one document of this kind that all others stand on; kinds of which there may be none have none. */
  readonly needed?: string;
};

/** How every kind of document is read. */
export type Registry<Kinds extends Bodies = Bodies> = {
  readonly [Kind in DocumentKind]: KindEntry<Kinds[Kind]>;
};

/** Any document whose body has been read by the schema of its kind. */
export type AnyDocument<Kinds extends Bodies> = {
  [Kind in DocumentKind]: Stored<Kind, Kinds[Kind]>;
}[DocumentKind];
