import type { BackendTx } from '@/app/_backend/backend';
import { isPlainObject } from '@/lib/merging/sameValue';
import { type Bodies, entryOf, type StoreKinds } from '@/lib/stored/registry';
import { sha256OfBytes, sha256OfValue } from '@/lib/stored/sha256';
import type { Paper, PaperNumber } from '@/shared/schemas/happened';
import type { Refused } from './applyToStored';
import { commitEdit, type Written } from './commitEdit';
import { claimCounts } from './deviceIdentity';

/** A file as it went out. */
interface PaperFile {
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
  };
}[keyof Papers & string];

interface PaperToIssue {
  readonly label: string;
  readonly tab: string;
  readonly at: number;
  readonly paper: NewPaper;
}

type Issued = Omit<Written, 'state'> & { readonly state: 'issued'; readonly paper: Paper };

/**
 * Numbers a paper after all that are known of its series, by whatever device, and writes it with its file, the entry
 * that says so and the step of history.
 *
 * @throws what the paper's own functions throw; nothing is written then
 */
export async function issuePaper(
  tx: BackendTx,
  kinds: StoreKinds,
  { label, tab, at, paper: asked }: PaperToIssue,
): Promise<Issued | Refused> {
  const kind = entryOf(kinds.paperKinds, asked.kind);
  if (kind === undefined) throw new UnknownPaperKind(asked.kind);
  const highest = await highestNumber(tx, asked.series);
  const { device, first } = await claimCounts(tx, 1);
  const number: PaperNumber = { count: highest + 1, letter: device.letter };
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
  await tx.put('papers', [paper]);
  const written = await commitEdit(tx, kinds.registry, {
    label,
    tab,
    at,
    changes: [],
    entries: [
      { kind: 'issuing', version: kinds.entryKinds.issuing?.version ?? 1, body: { paperId: paper.id } },
    ],
    ...(file === undefined || sha256 === null
      ? {}
      : { files: [{ id: sha256, name: file.name, content: new Blob([file.content]) }] }),
  });
  return written.state === 'refused' ? written : { ...written, state: 'issued', paper };
}

// Helpers

class UnknownPaperKind extends Error {
  override readonly name = 'UnknownPaperKind';
  constructor(kind: string) {
    super(`no table knows papers of the kind “${kind}”`);
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
