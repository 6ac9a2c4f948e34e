import { coolsByFan, coolsInPlace, needsLintRoll } from '@/lib/check/recipe/stepNeeds';
import type { Change } from '@/shared/finding';
import type { Blank } from '@/shared/schemas/blank';
import type { Job, Recipe } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import { thresholds } from '@/shared/tables/thresholds';
import type { Question, QuestionId } from './question';

/**
 * What nobody has told about a job's blanks and recipes yet. Blanks keep their answer for every job; an answer about
 * a step is written into every recipe of the job that does not yet say.
 */
export const jobQuestions = ({ job, blanks }: Pick<JobInput, 'job' | 'blanks'>): readonly Question[] => [
  ...[...new Set(job.lines.map(({ blankId }) => blankId))].flatMap((id) => {
    const blank = blanks[id];
    return blank === undefined ? [] : blankQuestions(id, blank);
  }),
  ...stepQuestions(job, blanks),
];

/** Rules about children hang on it, and nobody but the maker can say. */
const blankQuestions = (id: string, blank: Blank): readonly Question[] =>
  blank.forChildren === null
    ? [
        {
          id: 'forChildren',
          of: blank.name,
          yes: [{ document: 'blank', id, path: ['forChildren'], value: true }],
          no: [{ document: 'blank', id, path: ['forChildren'], value: false }],
          unsure: null,
        },
      ]
    : [];

/** One question for each step, whichever recipes do not say. */
function stepQuestions(job: Job, blanks: JobInput['blanks']): readonly Question[] {
  const steps = job.lines.flatMap(({ blankId, placements }, line) => {
    const blank = blanks[blankId];
    return blank === undefined
      ? []
      : placements.map(({ recipe }, index) => ({
          blank,
          recipe,
          path: ['lines', line, 'placements', index, 'recipe', 'steps'] as const,
        }));
  });
  const ask = (
    id: QuestionId,
    key: keyof Recipe['steps'],
    [yes, no]: readonly [unknown, unknown],
    applies: (blank: Blank) => boolean,
  ): readonly Question[] => {
    const open = steps.filter(({ blank, recipe }) => recipe.steps[key] === null && applies(blank));
    const write = (value: unknown): readonly Change[] =>
      open.map(({ path }) => ({ document: 'job', path: [...path, key], value }));
    return open.length === 0 ? [] : [{ id, of: '', yes: write(yes), no: write(no), unsure: null }];
  };
  return [
    ...ask('lintRoll', 'lintRoll', [true, false], needsLintRoll),
    ...ask('tapeEdges', 'tapeEdges', [true, false], () => true),
    ...ask('coolInPlace', 'coolSeconds', [thresholds.steps.cool.value, 0], coolsInPlace),
    ...ask('evenCooling', 'evenCooling', [true, false], coolsByFan),
  ];
}
