import type { ZodType } from 'zod';
import type { Stored } from '@/shared/schemas/stored';
import type { Parting } from './leaving';

/** What the body of each kind of document is. */
export type Bodies = Readonly<Record<string, unknown>>;

/** Takes a body of one version to the next. Pure; it may throw on a body it cannot take. */
type Migration = (body: unknown) => unknown;

/**
 * draft: changed and merged, deleting leaves a tombstone. issued: a paper that went out and never changes. entry:
 * something that happened, only ever added and taken back by another.
 */
type Nature = 'draft' | 'issued' | 'entry';

/** A thing that a document names by its id: another document, or a part of the workshop. */
export interface Link {
  /** A kind of document, or of part such as printer; `paper` and `entry` for those of any kind. */
  readonly to: string;
  readonly id: string;
  /** Where in the body it is named. */
  readonly path: readonly (string | number)[];
  /** Named as something of its own, which is not carried along. */
  readonly isApart?: true;
}

/** What reading needs of a schema: one that is fetched later reads like one that is here. */
export type BodySchema<Body> = Pick<ZodType<Body>, 'parse' | 'safeParse'>;

/** How one kind of document is read. */
export interface KindReading<Body> {
  /** Version of the shape that `schema` describes. */
  readonly version: number;
  /** Strict schema of that version. Any new, renamed or dropped key is a new version. */
  readonly schema: BodySchema<Body>;
  /** `steps[n]` takes version n to n + 1; there is one for every n from 1 to `version` − 1. */
  readonly steps: Readonly<Record<number, Migration>>;
  /** `partings[n]` tells what leaves a body of version n with the step to n + 1; most steps let nothing go. */
  readonly partings?: Readonly<Record<number, Parting>>;
}

/** A number that a body bears: the write that keeps it gives it, whatever the body said before. */
interface NumberBorne<Body> {
  /** What is counted together. */
  readonly series: string;
  readonly number: { readonly count: number; readonly letter: string };
  /** The same body under another number. */
  with(number: { readonly count: number; readonly letter: string }): Body;
}

/** All that is known of a kind but its schema. */
export type KindFacts<Body, Of extends Nature = Nature> = Omit<KindReading<Body>, 'schema'> & {
  readonly nature: Of;
  /** What one is called in the middle of a sentence. */
  readonly word: string;
  /** Id of the one document of this kind that all others stand on; kinds of which there may be none have none. */
  readonly needed?: string;
  /** What a body names by id. A method, so that one kind can be handed on as any. */
  linksOf(body: Body): readonly Link[];
  /** Of papers: `device` counts those of each device and letter for themselves, without a gap; else all known ones are. */
  readonly numbering?: 'device';
  /** Of papers: none is kept without the file that went out. */
  readonly needsFile?: true;
  /** Of entries: the number this one bears; null, or not told at all, where it bears none. */
  numberIn?(body: Body): NumberBorne<Body> | null;
};

/** Everything the app knows of one kind of document. */
export type KindDescriptor<Body, Of extends Nature = Nature> = KindFacts<Body, Of> & {
  readonly schema: ZodType<Body>;
};

/** A kind as a store knows it. */
type StoredKind<Body, Of extends Nature> = KindFacts<Body, Of> & KindReading<Body>;

/** How every kind of document in a store is read. */
export type Registry<Kinds extends Bodies = Bodies> = {
  readonly [Kind in keyof Kinds & string]: StoredKind<Kinds[Kind], 'draft'>;
};

/** How every kind of paper is read. */
export type PaperRegistry<Papers extends Bodies = Bodies> = {
  readonly [Kind in keyof Papers & string]: StoredKind<Papers[Kind], 'issued'>;
};

/** How every kind of entry is read. */
export type EntryRegistry<Entries extends Bodies = Bodies> = {
  readonly [Kind in keyof Entries & string]: StoredKind<Entries[Kind], 'entry'>;
};

/** Any document whose body has been read by the schema of its kind. */
export type AnyDocument<Kinds extends Bodies> = {
  [Kind in keyof Kinds & string]: Stored<Kind, Kinds[Kind]>;
}[keyof Kinds & string];

/** What a body of each kind names. */
export type LinkedKinds = Readonly<Record<string, { linksOf(body: unknown): readonly Link[] }>>;

/** How everything a store holds is read, by its nature. */
export interface StoreKinds {
  readonly registry: Registry;
  readonly paperKinds: PaperRegistry;
  readonly entryKinds: EntryRegistry;
}

/** @returns how a kind is read; `undefined` for one that a later build wrote. */
export const entryOf = <Descriptor>(
  registry: Readonly<Record<string, Descriptor>>,
  kind: string,
): Descriptor | undefined => (Object.hasOwn(registry, kind) ? registry[kind] : undefined);

/** @returns whether a body can be read as a document of a kind. */
export const bodyFits = (registry: Registry, kind: string, body: unknown): boolean =>
  entryOf(registry, kind)?.schema.safeParse(body).success === true;

/** @returns the documents without which no other can be worked with. */
export const neededDocuments = (
  registry: Registry,
): readonly { readonly kind: string; readonly id: string }[] =>
  Object.entries(registry).flatMap(([kind, { needed }]) =>
    needed === undefined ? [] : [{ kind, id: needed }],
  );
