import { checkJob } from '@/lib/check/checkJob';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { lineRule } from '@/lib/job/lineRule';
import { layOutApart } from '@/lib/layout/layOutJob';
import type { LayoutSearch } from '@/lib/layout/layoutSearch';
import { type SharedQuestion, sharedQuestion } from '@/lib/layout/sharedQuestion';
import type { JobInput } from '@/shared/schemas/request';

/**
 * What the sums of a job ask of its shared sheets: those of the whole job, and those of each line that is listed by
 * itself.
 *
 * @returns none where no sheets are shared
 */
export function questionsOf(checked: CheckedJob): readonly SharedQuestion[] {
  if (checked.job.gang !== 'together') return [];
  const prints = layOutApart(checked);
  const listed =
    checked.lines.length === 1 ? [] : checked.lines.filter((line) => lineRule(checked, line) !== 'onePrice');
  const questions = [
    prints,
    ...listed.map(({ line }) => prints.filter(({ lineId }) => lineId === line.id)),
  ].flatMap((some) => sharedQuestion(checked, some) ?? []);
  return [...new Map(questions.map((question) => [question.key, question])).values()];
}

/** @returns the same of documents; none where a stop stands. */
export function layoutQuestions(input: JobInput): readonly SharedQuestion[] {
  if (input.job.gang !== 'together') return [];
  const { checked } = checkJob(input);
  return checked === null ? [] : questionsOf(checked);
}

/**
 * The documents with the best layouts of their shared sheets that are looked for at all, for whoever does not want a
 * first answer before: what a screen shows once it has ended looking.
 */
export function thoroughInput(input: JobInput, search: LayoutSearch): JobInput {
  const questions = layoutQuestions(input);
  if (questions.length === 0) return input;
  for (const _ of search.goOn(questions));
  return { ...input, layouts: search.known(questions) };
}
