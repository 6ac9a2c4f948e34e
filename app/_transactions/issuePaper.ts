import type { BackendTx } from '@/app/_backend/backend';
import { isPlainObject } from '@/lib/merging/sameValue';
import { type NewEntry, prepareEntries, type UncountedEntry } from '@/lib/stored/newEntries';
import type { EditFinding } from '@/lib/stored/prepareEdit';
import { type Bodies, entryOf, type KindFacts, type StoreKinds } from '@/lib/stored/registry';
import { sha256OfBytes, sha256OfValue } from '@/lib/stored/sha256';
import { takenBy } from '@/lib/stored/takeBack';
import type { Paper, PaperNumber } from '@/shared/schemas/happened';
import type { Refused } from './applyToStored';
import { commitEdit, type Written } from './commitEdit';
import { claimCounts, type Device } from './deviceIdentity';
import { lastGiven, noteGiven } from './deviceNumbers';

/** A file as it went out. */
export interface PaperFile {
  readonly name: string;
  readonly content: Uint8Array<ArrayBuffer>;
}

/** A paper before it has a number. Both functions are called while the number is held: they wait for nothing. */
export type NewPaper<Papers extends Bodies = Bodies> = {
  readonly [Kind in keyof Papers & string]: {
    readonly kind: Kind;
    readonly about: Paper['about'];
    readonly series: string;
    // Methods, so that a paper of a known kind can be handed on as a paper of any.
    body(number: PaperNumber): Papers[Kind];
    file?(number: PaperNumber): PaperFile | undefined;
    /** What happens with it and is noted in the same step: an order was quoted. */
    notes?(paperId: string): readonly NewEntry[];
  };
}[keyof Papers & string];

interface PaperToIssue {
  readonly label: string;
  readonly tab: string;
  readonly at: number;
  readonly paper: NewPaper;
  /** The number it was made for, where that took time. */
  readonly madeFor?: PaperNumber;
}

/** The number it was made for has been given to another meanwhile; nothing was written. */
interface Overtaken {
  readonly state: 'overtaken';
}

type Issued = Omit<Written, 'state'> & { readonly state: 'issued'; readonly paper: Paper };

/**
 * Numbers a paper as its kind is numbered, and writes it with its file, the entry that says so and the step of history.
 *
 * @throws what the paper's own functions throw; nothing is written then
 */
export async function issuePaper(
  tx: BackendTx,
  kinds: StoreKinds,
  { label, tab, at, paper: asked, madeFor }: PaperToIssue,
): Promise<Issued | Overtaken | Refused> {
  const kind = kindOf(kinds, asked.kind);
  const number = await nextPaperNumber(tx, kinds, asked);
  if (madeFor !== undefined && (madeFor.count !== number.count || madeFor.letter !== number.letter)) {
    return { state: 'overtaken' };
  }
  const { device, first } = await claimCounts(tx, 1);
  const body = asked.body(number);
  const file = asked.file?.(number);
  const sha256 = file === undefined ? null : sha256OfBytes(file.content);
  const paper: Paper = {
    id: `${device.id}-${first}`,
    kind: asked.kind,
    version: kind.version,
    device: device.id,
    count: first,
    at,
    series: asked.series,
    number,
    about: asked.about,
    sha256: sha256OfValue(body),
    file:
      file === undefined || sha256 === null ? null : { sha256, name: file.name, bytes: file.content.length },
    body,
  };
  const notes = await notesOf(tx, kinds, asked.notes?.(paper.id) ?? []);
  await tx.put('papers', [paper]);
  if (kind.numbering === 'device') await noteGiven(tx, device, asked.series, number.count);
  const written = await commitEdit(tx, kinds, {
    label,
    tab,
    at,
    changes: [],
    entries: [
      { kind: 'issuing', version: kinds.entryKinds.issuing?.version ?? 1, body: { paperId: paper.id } },
      ...notes,
    ],
    ...(file === undefined || sha256 === null
      ? {}
      : { files: [{ id: sha256, name: file.name, content: new Blob([file.content]) }] }),
  });
  return written.state === 'refused' ? written : { ...written, state: 'issued', paper };
}

/** @returns the number that a paper issued now would get. Another tab may be given it before. */
export async function nextPaperNumber(
  tx: BackendTx,
  kinds: Pick<StoreKinds, 'paperKinds'>,
  { kind, series }: Pick<NewPaper, 'kind' | 'series'>,
): Promise<PaperNumber & { readonly letter: string }> {
  const { device } = await claimCounts(tx, 0);
  return { count: 1 + (await lastNumber(tx, kindOf(kinds, kind), series, device)), letter: device.letter };
}

// Helpers

function kindOf({ paperKinds }: Pick<StoreKinds, 'paperKinds'>, name: string): KindFacts<unknown, 'issued'> {
  const kind = entryOf(paperKinds, name);
  if (kind === undefined) throw new UnknownPaperKind(name);
  return kind;
}

/** What it takes back must be kept already: nothing that only waits could be named for good. */
async function notesOf(
  tx: BackendTx,
  { entryKinds }: Pick<StoreKinds, 'entryKinds'>,
  notes: readonly NewEntry[],
): Promise<readonly UncountedEntry[]> {
  const named = notes.flatMap((note) => takenBy(note) ?? []);
  const rows = named.length === 0 ? [] : await tx.get('entries', named);
  const known = new Set(named.filter((_, at) => rows[at] !== undefined));
  const prepared = prepareEntries(notes, entryKinds, (id) => known.has(id));
  if (!prepared.ok) throw new UnreadNotes(prepared.problem);
  return prepared.value;
}

const lastNumber = (
  tx: BackendTx,
  { numbering }: Pick<KindFacts<unknown, 'issued'>, 'numbering'>,
  series: string,
  device: Device,
): Promise<number> => (numbering === 'device' ? lastGiven(tx, device, series) : highestNumber(tx, series));

class UnknownPaperKind extends Error {
  override readonly name = 'UnknownPaperKind';
  constructor(kind: string) {
    super(`no table knows papers of the kind “${kind}”`);
  }
}

/** What is to be noted with a paper is not what its kind takes: a fault of whoever asked. */
export class UnreadNotes extends Error {
  override readonly name = 'UnreadNotes';
  constructor(findings: readonly EditFinding[]) {
    super(`what is noted with a paper is none of it: ${JSON.stringify(findings)}`);
  }
}

/** A paper that cannot be read, or was set aside, has its number all the same. */
async function highestNumber(tx: BackendTx, series: string): Promise<number> {
  const aside = (await tx.all('aside')).map((row) => (isPlainObject(row) ? row.raw : undefined));
  return [...(await tx.all('papers')), ...aside].reduce<number>((highest, row) => {
    const number = isPlainObject(row) && row.series === series ? row.number : undefined;
    const count = isPlainObject(number) ? number.count : undefined;
    return typeof count === 'number' && Number.isSafeInteger(count) ? Math.max(highest, count) : highest;
  }, 0);
}
