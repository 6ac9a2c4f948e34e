import { exampleRun } from '@/app/_commands/exampleRun';
import { answerRun } from '@/app/_requests/answerRun';
import { runOfCopy } from '@/app/_requests/runOfCopy';
import { type Job, jobSchema } from '@/shared/schemas/job';
import { grid } from '@/tests/fixtures/costed';

/** The worked run as its file has it. */
export const made = JSON.parse(JSON.stringify(exampleRun(grid)));

/** What the command has for a run, planned or not, without a process of its own. */
export async function tableOf(documents: unknown) {
  const bytes = new TextEncoder().encode(JSON.stringify(documents));
  const read = await runOfCopy(bytes, { file: 'run.json', runId: null, day: made.asOf });
  if (read.kind === 'unusable') throw new Error(read.why);
  return answerRun(read.asked);
}

/** What it answers for one that can be planned. */
export async function asked(documents: unknown) {
  const table = await tableOf(documents);
  if (table.kind === 'refused') throw new Error(JSON.stringify(table.answer));
  return { ...table.answer, beside: table.beside };
}

export type Body = Readonly<Record<string, unknown>>;

export interface WrittenEntry {
  readonly entry: {
    readonly id: string;
    readonly kind: string;
    readonly device: string;
    readonly count: number;
    readonly at: number;
    readonly version: number;
    readonly body: Body;
  };
}

/** The example with other entries. */
export function withEntries(change: (entries: readonly WrittenEntry[]) => readonly WrittenEntry[]) {
  const entries = change(made.entries);
  return { ...made, entries, counts: { ...made.counts, entries: entries.length } };
}

export interface WrittenDraft {
  readonly draft: { readonly kind: string; readonly body: Body };
}

/** Noted later than all that the example holds. */
export const numbered = (count: number) => ({ id: `exampleclubrun-${count}`, count, at: made.madeAt });

const withDraft = (kind: string, change: (body: Body) => Body, of = made) => ({
  ...of,
  drafts: of.drafts.map(({ draft, ...more }: WrittenDraft) => ({
    ...more,
    draft: draft.kind === kind ? { ...draft, body: change(draft.body) } : draft,
  })),
});
export const withRun = (change: Body, of = made) => withDraft('run', (body) => ({ ...body, ...change }), of);
export const withJob = (change: (job: Job) => Job) =>
  withDraft('job', (body) => ({ ...change(jobSchema.parse(body)) }));

export const kindOf = ({ entry }: WrittenEntry) => entry.kind;
