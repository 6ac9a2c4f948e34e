import { describe, expect, it } from 'vitest';
import {
  jobQuestionsHeading,
  questionWords,
  workshopQuestionsHeading,
} from '@/app/_words/questions/questionWords';
import { checkJob } from '@/lib/check/checkJob';
import { jobQuestions } from '@/lib/check/questions/jobQuestions';
import { isTyped, type Question } from '@/lib/check/questions/question';
import { workshopQuestions } from '@/lib/check/questions/workshopQuestions';
import { regionOf } from '@/lib/examples/regionOf';
import { noChoices } from '@/lib/examples/startChoices';
import { startDraft } from '@/lib/examples/startDraft';
import { applyChanges } from '@/lib/findings/applyChanges';
import type { Change } from '@/shared/finding';
import { untoldHabits } from '@/shared/schemas/habits';
import { untoldSteps } from '@/shared/schemas/recipeSteps';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { club, clubWith, mugsWith, TODAY, told } from '@/tests/fixtures/clubJob';

/** The example workshop before anybody asked it anything. */
const untold = (): JobInput =>
  clubWith({
    'workshop.habits': untoldHabits,
    'workshop.circuit': null,
    'workshop.room': { ventilated: null, foodOvenUsed: false },
    'workshop.printers.0.printedSide': null,
    'job.sewnLabel': 'unknown',
  });

const given = (input: JobInput, changes: readonly Change[]): JobInput =>
  jobInputSchema.parse(applyChanges(input, changes));

const written = (answer: Question['yes']): readonly Change[] => (isTyped(answer) ? [] : answer);

const named = (questions: readonly Question[]) => questions.map(({ id }) => id);

describe('what nobody has told of the workshop', () => {
  it('is asked once, and makes no finding on a job', () => {
    expect(named(workshopQuestions(untold().workshop))).toEqual([
      'ventilated',
      'ownCircuit',
      'intoWall',
      'printedSide',
      'sewnLabel',
      'safetySheets',
      'humidity',
    ]);
    expect(checkJob(untold()).findings.map(({ id }) => id)).toEqual(
      checkJob(club()).findings.map(({ id }) => id),
    );
  });

  it('is nothing in the example workshop', () => {
    expect(workshopQuestions(club().workshop)).toEqual([]);
  });

  it('is asked of each printer by its name', () => {
    const [side] = workshopQuestions(untold().workshop).filter(({ id }) => id === 'printedSide');
    if (side === undefined) throw new Error('the side is not asked');
    expect(questionWords(side).question).toContain('Desk printer');
    expect(questionWords(side).unsure).toBe('Not sure');
  });

  it.each(workshopQuestions(untold().workshop))(
    '$id is answered by either button, and then not asked',
    (question) => {
      for (const changes of [
        written(question.yes),
        question.no,
        ...(question.unsure === null ? [] : [question.unsure]),
      ]) {
        const { workshop } = given(untold(), changes);
        expect(named(workshopQuestions(workshop))).not.toContain(question.id);
      }
    },
  );

  it.each(workshopQuestions(untold().workshop))('a good answer to $id leaves no finding', (question) => {
    expect(checkJob(given(untold(), written(question.yes))).findings).toEqual(checkJob(untold()).findings);
  });

  it.each([
    ['ventilated', 'no', 'SAF-01', 'caution'],
    ['ownCircuit', 'no', 'ELE-01', 'caution'],
    ['printedSide', 'unsure', 'LAY-09', 'caution'],
    ['sewnLabel', 'no', 'LAW-01', 'stop'],
  ] as const)('a bad answer to %s is told on the job: %s, %s %s', (id, answer, finding, severity) => {
    const [question] = workshopQuestions(untold().workshop).filter((one) => one.id === id);
    const input = given(untold(), written(question?.[answer] ?? []));
    expect(told(input, finding).map((one) => one.severity)).toEqual([severity]);
  });

  it('has a heading that counts them', () => {
    expect(workshopQuestionsHeading(1)).toBe('One thing about your workshop');
    expect(workshopQuestionsHeading(7)).toBe('7 things about your workshop');
    expect(jobQuestionsHeading(1)).toBe('One thing about this job');
    expect(jobQuestionsHeading(2)).toBe('2 things about this job');
  });
});

describe('every question', () => {
  const steps = { 'job.lines.0.placements.0.recipe.steps': untoldSteps };
  const all = [
    ...workshopQuestions(untold().workshop),
    ...jobQuestions(clubWith({ ...steps, 'blank:white-shirt.forChildren': null })),
    ...jobQuestions(mugsWith(steps)),
  ];

  it.each(all)('$id has words: a question, and what hangs on it', (question) => {
    const { question: asked, why, yes, no } = questionWords(question);
    expect(asked).toMatch(/^\p{Lu}.*\?$/u);
    expect(why).toMatch(/^\p{Lu}.*\.$/u);
    expect([yes, no].join(' ')).not.toMatch(/undefined/);
  });
});

describe('what nobody has told of a job', () => {
  it('is nothing in the examples, and nothing but whom the shirt is for in a new workshop', () => {
    expect(jobQuestions(club())).toEqual([]);
    const ids = { job: 'job', blank: 'blank', artwork: 'artwork' };
    const { job, blank } = startDraft('shirt', noChoices(regionOf('en-US')), TODAY, ids);
    expect(named(jobQuestions({ job, blanks: { blank } }))).toEqual(['forChildren']);
  });

  it('asks for a step once, and writes it into every recipe that does not say', () => {
    const input = clubWith({
      'job.lines.0.placements.0.recipe.steps': untoldSteps,
      'job.lines.0.placements.1.recipe.steps': untoldSteps,
    });
    const questions = jobQuestions(input);
    expect(named(questions)).toEqual(['lintRoll', 'tapeEdges', 'coolInPlace']);
    expect(checkJob(input).findings).toEqual(checkJob(club()).findings);
    const answered = given(
      input,
      questions.flatMap(({ yes }) => written(yes)),
    );
    expect(jobQuestions(answered)).toEqual([]);
    expect(answered.job.lines[0]?.placements.map(({ recipe }) => recipe.steps.coolSeconds)).toEqual([10, 10]);
  });

  it('asks of mugs for a fan, and not for a lint roller', () => {
    const input = mugsWith({ 'job.lines.0.placements.0.recipe.steps': untoldSteps });
    expect(named(jobQuestions(input))).toEqual(['tapeEdges', 'evenCooling']);
  });

  it('asks once whether a blank is for children, however many lines use it', () => {
    const input = mugsWith({ 'blank:white-mug.forChildren': null });
    expect(named(jobQuestions(input))).toEqual(['forChildren']);
  });
});
