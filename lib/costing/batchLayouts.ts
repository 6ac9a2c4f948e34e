import { checkJob } from '@/lib/check/checkJob';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { batchesOf, batchKey } from '@/lib/layout/batchSheets';
import { layOutApart, layOutJob } from '@/lib/layout/layOutJob';
import { type SharedQuestion, sharedQuestion } from '@/lib/layout/sharedQuestion';
import { firstSheets } from '@/lib/layout/sharedSheets';
import type { KnownLayouts, PackedSheets } from '@/shared/packedSheets';
import type { JobInput } from '@/shared/schemas/request';

/** Layouts that are remembered: those of a few jobs, or of one before and after its edits. */
const MOST_REMEMBERED = 200;

/**
 * What the batches of a job ask of its shared sheets.
 *
 * @param checked with the layouts of its own sheets that are known
 * @returns none where no sheets are shared: batches of prints by themselves need no packing
 */
export function batchQuestions(checked: CheckedJob): readonly SharedQuestion[] {
  if (checked.job.gang !== 'together' || layOutJob(checked).shared === null) return [];
  const prints = layOutApart(checked);
  const places = new Set(sharedQuestion(checked, prints)?.prints);
  const sharing = prints.filter((_, index) => places.has(index));
  const questions = batchesOf(checked, sharing).flatMap(({ question }) => question ?? []);
  return [...new Map(questions.map((question) => [question.key, question])).values()];
}

/** @returns the documents with the layouts of all batches, for whoever does not want an estimate before. */
export function batchedInput(input: JobInput, batches: BatchLayouts): JobInput {
  if (input.job.gang !== 'together') return input;
  const { checked } = checkJob(input);
  const questions = checked === null ? [] : batchQuestions(checked);
  for (const _ of batches.goOn(questions));
  return questions.length === 0
    ? input
    : { ...input, layouts: { ...batches.known(questions), ...input.layouts } };
}

/** Packs batches once each, by their first answers, and remembers them. */
export class BatchLayouts {
  readonly #known = new Map<string, PackedSheets | null>();

  /** @returns nothing until all are packed, so that a curve changes once and not with each of them. */
  known(questions: readonly SharedQuestion[]): KnownLayouts {
    if (!this.isAtEnd(questions)) return {};
    return Object.fromEntries(
      questions.flatMap((question) => {
        const packed = this.#known.get(question.key);
        // Where each piece lies would make the documents ten times as long for every study that is asked.
        return packed == null ? [] : [[batchKey(question), { ...packed, sheets: [] }] as const];
      }),
    );
  }

  isAtEnd(questions: readonly SharedQuestion[]): boolean {
    return questions.every(({ key }) => this.#known.has(key));
  }

  /** @yields after each packing, some 25 to 45 ms */
  *goOn(questions: readonly SharedQuestion[]): Generator<void, void> {
    for (const question of questions) {
      if (this.#known.has(question.key)) continue;
      this.#known.set(question.key, firstSheets(question));
      this.#forget(questions);
      yield;
    }
  }

  /** The oldest that are not asked for now. */
  #forget(questions: readonly SharedQuestion[]): void {
    const asked = new Set(questions.map(({ key }) => key));
    for (const key of this.#known.keys()) {
      if (this.#known.size <= MOST_REMEMBERED) break;
      if (!asked.has(key)) this.#known.delete(key);
    }
  }
}
