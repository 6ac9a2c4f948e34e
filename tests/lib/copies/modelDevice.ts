import { arrangeArrival } from '@/lib/copies/arrangeArrival';
import type { ArrivalChoice, ArrivalPlan, Here } from '@/lib/copies/arrival';
import { contentOf } from '@/lib/copies/contentOf';
import { planArrival } from '@/lib/copies/planArrival';
import { writeCopy } from '@/lib/copies/writeCopy';
import type { StoreKinds } from '@/lib/stored/registry';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';
import { joined, noPause, readWhole } from './copyTools';

/** A device as the rules of keeping have it, in memory: what the real store must come to as well. */
export interface ModelDevice {
  readonly here: Omit<Here, 'files'>;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

export const emptyDevice = (id: string, letter: string): ModelDevice => ({
  here: {
    drafts: new Map(),
    papers: [],
    entries: [],
    unreadable: [],
    exchanged: new Map(),
    device: { id, letter },
  },
  files: new Map(),
});

export const holding = (
  device: ModelDevice,
  more: {
    readonly drafts?: readonly Stored[];
    readonly papers?: readonly Paper[];
    readonly entries?: readonly Entry[];
    readonly files?: ReadonlyMap<string, Uint8Array>;
  },
): ModelDevice => ({
  here: {
    ...device.here,
    drafts: new Map([
      ...device.here.drafts,
      ...(more.drafts ?? []).map((draft) => [draft.id, draft] as const),
    ]),
    papers: [...device.here.papers, ...(more.papers ?? [])],
    entries: [...device.here.entries, ...(more.entries ?? [])],
  },
  files: new Map([...device.files, ...(more.files ?? [])]),
});

export const edited = (
  device: ModelDevice,
  id: string,
  to: (body: never) => unknown,
  at: number,
): ModelDevice => {
  const draft = device.here.drafts.get(id);
  if (draft === undefined) throw new Error(`no ${id}`);
  const next = { ...draft, revision: draft.revision + 1, updatedAt: at, body: to(draft.body as never) };
  return holding(device, { drafts: [next] });
};

/** Makes a copy; the device notes what went out. */
export async function leave(
  device: ModelDevice,
  asked: Parameters<typeof contentOf>[0],
  kinds: StoreKinds,
): Promise<{ readonly device: ModelDevice; readonly bytes: Uint8Array }> {
  const outgoing = await contentOf(asked, device.here, { kinds, madeAt: 1_700_000_000_000, pause: noPause });
  if (outgoing === null) throw new Error('nothing to carry');
  const readFile = async (sha256: string) => device.files.get(sha256) ?? null;
  const bytes = await joined(
    writeCopy(outgoing.content, { readFile, leftOut: () => undefined, pause: noPause }),
  );
  return { device: withExchanged(device, outgoing.exchanged), bytes };
}

export async function look(device: ModelDevice, bytes: Uint8Array, kinds: StoreKinds) {
  const { copy, fileOf } = await readWhole(bytes, kinds);
  const here = { ...device.here, files: new Set(device.files.keys()) };
  const plan = await planArrival(here, copy, { registry: kinds.registry, pause: noPause });
  return { plan, fileOf };
}

export async function take(
  device: ModelDevice,
  bytes: Uint8Array,
  how: ArrivalChoice,
  kinds: StoreKinds,
): Promise<{ readonly device: ModelDevice; readonly plan: ArrivalPlan }> {
  const { plan, fileOf } = await look(device, bytes, kinds);
  const arrival = arrangeArrival(plan, how, kinds.registry);
  const at = 1 + Math.max(0, ...[...device.here.drafts.values()].map(({ updatedAt }) => updatedAt));
  const written = [
    ...arrival.goes.map(({ id, kind, version, body }) => ({
      id,
      kind,
      snapshot: { version, deleted: true, body },
    })),
    ...arrival.drafts,
  ].map(
    ({ id, kind, snapshot }): Stored => ({
      id,
      kind,
      version: snapshot.version,
      revision: (device.here.drafts.get(id)?.revision ?? 0) + 1,
      updatedAt: at,
      ...(snapshot.deleted ? { deletedAt: at } : {}),
      body: snapshot.body,
    }),
  );
  const files = new Map<string, Uint8Array>();
  for (const { sha256 } of arrival.files) files.set(sha256, (await fileOf(sha256)) ?? new Uint8Array());
  const next = holding(device, {
    drafts: written,
    papers: fresh(device.here.papers, arrival.papers),
    entries: fresh(device.here.entries, arrival.entries),
    files,
  });
  return { device: withExchanged(next, arrival.exchanged), plan };
}

const fresh = <Item extends { readonly id: string }>(here: readonly Item[], coming: readonly Item[]) =>
  coming.filter(({ id }) => !here.some((item) => item.id === id));

const withExchanged = (device: ModelDevice, rows: readonly { readonly id: string }[]): ModelDevice => ({
  ...device,
  here: {
    ...device.here,
    exchanged: new Map([...device.here.exchanged, ...rows.map((row) => [row.id, row] as const)]) as never,
  },
});

/** What a maker would see of a device: everything but revisions and clocks. */
export const seenOn = ({ here, files }: ModelDevice) => ({
  drafts: [...here.drafts.values()]
    .map(({ id, kind, deletedAt, body }) => ({
      id,
      kind,
      removed: deletedAt !== undefined,
      body: asJson(body),
    }))
    .toSorted((one, other) => (one.id < other.id ? -1 : 1)),
  papers: here.papers.toSorted((one, other) => (one.id < other.id ? -1 : 1)),
  entries: here.entries.toSorted((one, other) => (one.id < other.id ? -1 : 1)),
  files: [...files.keys()].toSorted(),
});

/** A field that is undefined and one that is not there say the same. */
const asJson = (body: unknown): unknown => JSON.parse(JSON.stringify(body));
