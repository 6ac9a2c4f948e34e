import type { DocumentActions } from '@/app/_store/documentStore';
import type { EditOutcome } from '@/app/_store/documentsState';
import type { DocumentKind } from '@/lib/kinds/draftFacts';
import type { EntryBodies } from '@/lib/kinds/entryKinds';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import type { NewEntry } from '@/lib/stored/newEntries';
import type { Edit } from '@/lib/stored/prepareEdit';
import type { Change } from '@/shared/finding';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank } from '@/shared/schemas/blank';
import type { Customer } from '@/shared/schemas/customer';
import type { Job } from '@/shared/schemas/job';
import type { Order } from '@/shared/schemas/order';
import type { PriceList } from '@/shared/schemas/priceList';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { Workshop } from '@/shared/schemas/workshop';
import { type FieldPath, setIn } from '@/shared/setIn';
import { WORKSHOP_ID } from './documentsByKind';
import { typing } from './typing';

/** One document of the maker, as an edit names it. */
export type Target =
  | { readonly kind: 'workshop' }
  | { readonly kind: Exclude<DocumentKind, 'workshop'>; readonly id: string };

/** Everything a screen does to documents. Labels are what undo says: “Pay”, “Pieces in L”. */
export interface WorkspaceActions {
  /** Sets one field. Quick edits of the same field undo as one. */
  readonly setField: (target: Target, label: string, path: FieldPath, value: unknown) => EditOutcome;
  readonly changeWorkshop: (label: string, to: (workshop: Workshop) => Workshop) => EditOutcome;
  /** Quick changes with the same `key` undo as one. */
  readonly changeJob: (id: string, label: string, to: (job: Job) => Job, key?: string) => EditOutcome;
  readonly changeBlank: (id: string, label: string, to: (blank: Blank) => Blank) => EditOutcome;
  readonly changeArtwork: (id: string, label: string, to: (artwork: Artwork) => Artwork) => EditOutcome;
  readonly changePriceList: (
    id: string,
    label: string,
    to: (list: PriceList) => PriceList,
    key?: string,
  ) => EditOutcome;
  readonly changeOrder: (id: string, label: string, to: (order: Order) => Order, key?: string) => EditOutcome;
  readonly changeCustomer: (
    id: string,
    label: string,
    to: (customer: Customer) => Customer,
    key?: string,
  ) => EditOutcome;
  readonly changeStallDay: (
    id: string,
    label: string,
    to: (stallDay: StallDay) => StallDay,
    key?: string,
  ) => EditOutcome;
  /** Applies the changes of a finding's fix, all or none, as one step. */
  readonly applyFix: (jobId: string, label: string, changes: readonly Change[]) => EditOutcome;
  readonly addJob: (id: string, job: Job) => EditOutcome;
  readonly addBlank: (id: string, blank: Blank) => EditOutcome;
  readonly addArtwork: (id: string, artwork: Artwork) => EditOutcome;
  readonly addPriceList: (id: string, list: PriceList) => EditOutcome;
  readonly addOrder: (id: string, order: Order) => EditOutcome;
  readonly addCustomer: (id: string, customer: Customer) => EditOutcome;
  readonly addStallDay: (id: string, stallDay: StallDay) => EditOutcome;
  readonly remove: (target: Target, label: string) => EditOutcome;
}

export function workspaceActions({
  edit,
  note,
}: Pick<DocumentActions<DocumentBodies>, 'edit' | 'note'>): WorkspaceActions {
  const one = (label: string, entry: Edit<DocumentBodies>, key?: string) => edit(label, [entry], key);
  return {
    setField: (target, label, path, value) =>
      one(label, fieldEdit(target, path, value), `${idOf(target)} ${path.join('.')} ${typing.act()}`),
    changeWorkshop: (label, to) => one(label, { do: 'change', kind: 'workshop', id: WORKSHOP_ID, to }),
    changeJob: (id, label, to, key) =>
      one(label, { do: 'change', kind: 'job', id, to }, key === undefined ? undefined : `${id} ${key}`),
    changeBlank: (id, label, to) => one(label, { do: 'change', kind: 'blank', id, to }),
    changeArtwork: (id, label, to) => one(label, { do: 'change', kind: 'artwork', id, to }),
    changePriceList: (id, label, to, key) =>
      one(label, { do: 'change', kind: 'priceList', id, to }, key === undefined ? undefined : `${id} ${key}`),
    changeOrder: (id, label, to, key) =>
      one(label, { do: 'change', kind: 'order', id, to }, key === undefined ? undefined : `${id} ${key}`),
    changeCustomer: (id, label, to, key) =>
      one(label, { do: 'change', kind: 'customer', id, to }, key === undefined ? undefined : `${id} ${key}`),
    changeStallDay: (id, label, to, key) =>
      one(label, { do: 'change', kind: 'stallDay', id, to }, key === undefined ? undefined : `${id} ${key}`),
    applyFix: (jobId, label, changes) =>
      note(
        label,
        changes.flatMap(approvalOf),
        changes.flatMap((change) => {
          const target = targetOf(change, jobId);
          return target === null ? [] : [fieldEdit(target, change.path, change.value)];
        }),
      ),
    addJob: (id, job) => one(job.name, { do: 'add', kind: 'job', id, body: job }),
    addBlank: (id, blank) => one(blank.name, { do: 'add', kind: 'blank', id, body: blank }),
    addArtwork: (id, artwork) => one(artwork.name, { do: 'add', kind: 'artwork', id, body: artwork }),
    addPriceList: (id, list) => one(list.name, { do: 'add', kind: 'priceList', id, body: list }),
    addOrder: (id, order) => one(order.name, { do: 'add', kind: 'order', id, body: order }),
    addCustomer: (id, customer) => one(customer.name, { do: 'add', kind: 'customer', id, body: customer }),
    addStallDay: (id, stallDay) => one(stallDay.name, { do: 'add', kind: 'stallDay', id, body: stallDay }),
    remove: (target, label) => one(label, { do: 'delete', kind: target.kind, id: idOf(target) }),
  };
}

const idOf = (target: Target): string => (target.kind === 'workshop' ? WORKSHOP_ID : target.id);

function approvalOf({
  document,
  id = '',
  value,
}: Change): readonly NewEntry<Pick<EntryBodies, 'approval'>>[] {
  if (document !== 'approval') return [];
  return [{ kind: 'approval', body: { artworkId: id, version: typeof value === 'number' ? value : null } }];
}

/** @returns null for what is noted and no document. */
function targetOf(change: Change, jobId: string): Target | null {
  switch (change.document) {
    case 'workshop':
      return { kind: 'workshop' };
    case 'job':
      return { kind: 'job', id: jobId };
    case 'blank':
    case 'artwork':
      return { kind: change.document, id: change.id ?? '' };
    case 'approval':
      return null;
    default:
      return change.document satisfies never;
  }
}

function fieldEdit(target: Target, path: FieldPath, value: unknown): Edit<DocumentBodies> {
  const { kind } = target;
  return { do: 'change', kind, id: idOf(target), to: <Body>(body: Body): Body => setIn(body, path, value) };
}
