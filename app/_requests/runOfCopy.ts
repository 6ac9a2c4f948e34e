import { recordReason } from '@/app/_words/store/recordWords';
import { readJobInput } from '@/lib/findings/readJobInput';
import type { AnyRunNote, StandardPaper } from '@/lib/making/runFacts';
import { foldStock, type Pile } from '@/lib/stock/foldStock';
import { type Run, runSchema } from '@/shared/schemas/making/run';
import type { Hours } from '@/shared/schemas/making/runEvents';
import {
  type Consumable,
  consumableSchema,
  type Supplier,
  supplierSchema,
} from '@/shared/schemas/making/supply';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import type { JobInput } from '@/shared/schemas/request';
import { type Workshop, workshopSchema } from '@/shared/schemas/workshop';
import { bodiesOf, entriesOf } from './bodiesOf';
import { type CopyOfFile, chosenDraft, copyOfFile, liveOf, requestOf, whichDraft } from './copyOfFile';
import { papersOf } from './papersOf';
import { plainContext } from './plainContext';

/** All that a run in a file is told by. */
export interface RunOfFile {
  readonly day: string;
  readonly runId: string;
  readonly run: Run;
  readonly workshop: Workshop;
  /** Of the run and of what it began with, by the id of the job; one that is not in the file is left out. */
  readonly inputs: ReadonlyMap<string, JobInput>;
  readonly notes: readonly AnyRunNote[];
  readonly standards: readonly StandardPaper[];
  /** Time noted for anything. */
  readonly hours: readonly { readonly body: Hours }[];
  readonly goodsIn: readonly GoodsIn[];
  readonly suppliers: readonly { readonly id: string; readonly supplier: Supplier }[];
  readonly consumables: readonly { readonly id: string; readonly consumable: Consumable }[];
  readonly piles: readonly Pile[];
}

type CopiedRun =
  | { readonly kind: 'run'; readonly asked: RunOfFile; readonly note: string | null }
  | { readonly kind: 'unusable'; readonly why: string };

interface OfFile {
  readonly file: string;
  /** Null where none is named. */
  readonly runId: string | null;
  /** The day it is asked on, YYYY-MM-DD. */
  readonly day: string;
}

/** What is known of a run in a copy or a carried run: the one that was carried, the only one, or the one named. */
export async function runOfCopy(bytes: Uint8Array, { file, runId, day }: OfFile): Promise<CopiedRun> {
  const read = await copyOfFile(bytes, file, 'Nothing was planned.');
  if (read.kind === 'unusable') return read;
  const { copy, workshop } = read;
  // Without a record that cannot be read it would be another run.
  const lost = copy.unreadable
    .filter(({ kind }) => kind !== null && needed.includes(kind))
    .map((record) => `${record.kind} ${record.id}: ${recordReason(record, plainContext)}`);
  if (lost.length > 0) return unusable(`${file} cannot be used.\n${lost.join('\n')}`);
  const draft = chosenDraft('run', copy, runId);
  if (draft === null) return unusable(`${file} ${whichDraft('run', liveOf('run', copy), runId)}`);
  const run = runSchema.parse(draft.body);
  const known = noted(read);
  const begunWith = known.standards
    .filter(({ body }) => body.runId === draft.id)
    .flatMap(({ body }) => body.works);
  const jobIds = new Set([...run.works, ...begunWith].map(({ jobId }) => jobId));
  const inputs = new Map<string, JobInput>();
  for (const job of liveOf('job', copy).filter(({ id }) => jobIds.has(id))) {
    const input = readJobInput(requestOf(read, job, day));
    if (!input.ok) return unusable(`${file}: the job ${job.id} cannot be read.`);
    inputs.set(job.id, input.value);
  }
  return {
    kind: 'run',
    note: read.note,
    asked: {
      day,
      runId: draft.id,
      run,
      inputs,
      workshop: workshopSchema.parse(workshop.body),
      ...known,
    },
  };
}

// Helpers

const needed: readonly string[] = [
  ...['run', 'job', 'blank', 'artwork', 'supplier', 'consumable', 'runStandard', 'goodsIn'],
  ...['pressing', 'sheetsPrinted', 'blankFault', 'runStep', 'runActual', 'hours', 'pressTest'],
];

function noted(read: Extract<CopyOfFile, { readonly kind: 'copy' }>) {
  const { copy, inForce } = read;
  const drafts = <Of>(kind: 'supplier' | 'consumable', parse: (body: unknown) => Of) =>
    Object.entries(bodiesOf(kind, copy)).map(([id, body]) => ({ id, body: parse(body) }));
  return {
    notes: [
      ...entriesOf('pressing', inForce),
      ...entriesOf('sheetsPrinted', inForce),
      ...entriesOf('blankFault', inForce),
      ...entriesOf('runStep', inForce),
      ...entriesOf('runActual', inForce),
      ...entriesOf('hours', inForce),
      ...entriesOf('pressTest', inForce),
    ],
    standards: papersOf('runStandard', read),
    hours: entriesOf('hours', inForce),
    goodsIn: entriesOf('goodsIn', inForce).map(({ body }) => body),
    suppliers: drafts('supplier', (body) => supplierSchema.parse(body)).map(({ id, body }) => ({
      ...{ id, supplier: body },
    })),
    consumables: drafts('consumable', (body) => consumableSchema.parse(body)).map(({ id, body }) => ({
      ...{ id, consumable: body },
    })),
    piles: foldStock([
      ...entriesOf('stockMove', inForce),
      ...entriesOf('stockTransfer', inForce),
      ...entriesOf('stockCount', inForce),
    ]),
  };
}

const unusable = (why: string): CopiedRun => ({ kind: 'unusable', why });
