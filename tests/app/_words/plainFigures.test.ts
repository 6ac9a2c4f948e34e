import { describe, expect, it } from 'vitest';
import type { AnswerWords } from '@/app/_words/docket/answerWords';
import { chargeWords, rushWords } from '@/app/_words/docket/chargeWords';
import { costAnswer } from '@/app/_words/docket/costWords';
import {
  curveAnswerWords,
  curveFigures,
  curveWords,
  pointWords,
  pricedWords,
  soldWords,
  summaryWords,
} from '@/app/_words/docket/curveWords';
import { goalSeekWords } from '@/app/_words/docket/goalSeekWords';
import { jobAnswerWords, pieceOfJob } from '@/app/_words/docket/jobAnswerWords';
import { gainShort, gainWords, leverAnswer, sortedLevers } from '@/app/_words/docket/leverAnswerWords';
import { sectionStates } from '@/app/_words/docket/sectionStates';
import { sellingAnswer } from '@/app/_words/docket/sellingWords';
import { sheetsAnswerWords } from '@/app/_words/docket/sheetWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { leverWords } from '@/app/_words/leverWords';
import { priceJob } from '@/lib/costing/priceJob';
import { rollUsed } from '@/lib/grid/rollUsed';
import { taxTermsOf } from '@/lib/price/taxTerms';
import { channelsAnswer } from '@/lib/studies/channels/channelsAnswer';
import { chargesAnswer } from '@/lib/studies/charges/chargesAnswer';
import { curveAnswer } from '@/lib/studies/curve/curveAnswer';
import { type GoalSeekQuestion, goalSeekAnswer } from '@/lib/studies/goalSeek/goalSeekAnswer';
import { leversAnswer } from '@/lib/studies/levers/leversAnswer';
import type { JobInput } from '@/shared/schemas/request';
import { clubWith, mugsWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { contexts } from '@/tests/tools/words/contexts';
import { wordFaults } from '@/tests/tools/words/wordFaults';

const NAMES = { line: 'iris Apron', print: 'eCho back' } as const;

/** Jobs that have brought up the worst words. */
const jobs: readonly (readonly [string, JobInput])[] = [
  [
    'the club’s order under names that begin small',
    clubWith({ 'job.lines.0.name': NAMES.line, 'job.lines.0.placements.0.name': NAMES.print }),
  ],
  ['one shirt', clubWith({ 'job.lines.0.quantities': [{ size: 'S', quantity: 1 }] })],
  [
    'one shirt without a price',
    clubWith({
      'job.lines.0.quantities': [{ size: 'S', quantity: 1 }],
      'job.lines.0.askedPrice': null,
    }),
  ],
  ['mugs of three pictures', mugsWith({})],
  ['a price that loses', clubWith({ 'job.lines.0.askedPrice': 11.5, 'job.lines.0.upCharges': [] })],
];

const all = ({ before = '', key, after = '' }: AnswerWords): string => `${before}${key}${after}`;

const questions: readonly GoalSeekQuestion[] = [
  { seek: 'priceForMargin', margin: 0.4 },
  { seek: 'priceForMargin', margin: 0.999 },
  { seek: 'priceForMargin', margin: 0 },
  { seek: 'priceForPay', perHour: 25 },
  { seek: 'batchForMargin', margin: 0.3, price: null },
  { seek: 'batchForMargin', margin: 0.3, price: 1000 },
  { seek: 'batchForMargin', margin: 0.95, price: 3 },
  { seek: 'largestWage', price: null },
  { seek: 'largestWage', price: 1 },
];

function sentencesOf(input: JobInput, context: TextContext): readonly string[] {
  const formatter = formatterFor(context);
  const piece = pieceOfJob(input);
  const { costSheet, prices } = priceJob(input, grid);
  const paper = input.workshop.sheets.find(({ id }) => id === input.job.sheetId);
  if (costSheet === null || paper === undefined) throw new Error('the job is stopped');
  const states = sectionStates(
    { input, isChecked: true, checks: [], questions: 1, costSheet, prices },
    context,
  );
  return [
    all(jobAnswerWords(input, formatter)),
    all(costAnswer(costSheet, piece, context.locale)),
    all(
      sheetsAnswerWords(
        { costs: costSheet, paper, used: rollUsed(costSheet, paper), wasteShare: 0.21, ...context },
        formatter,
      ),
    ),
    ...Object.values(states).map(({ text }) => text),
    ...curveOf(input, context),
    ...leversOf(input, context),
    ...chargesOf(input, context),
    ...questions.flatMap((question) => {
      const answer = goalSeekAnswer(input, grid, question);
      return answer === null ? [] : [goalSeekWords(answer, question, formatter)];
    }),
    all(sellingAnswer(channelsAnswer(input, grid)?.ways ?? [], context.locale)),
  ];
}

function curveOf(input: JobInput, context: TextContext): readonly string[] {
  const formatter = formatterFor(context);
  const piece = pieceOfJob(input);
  const study = curveAnswer(input, grid, { flatPrice: null });
  const [first] = study.kind === 'curve' ? study.points : [];
  if (study.kind !== 'curve' || first === undefined) throw new Error('there is a curve');
  const terms = taxTermsOf(study.taxInside);
  return [
    ...[null, first].map((looked) => all(curveAnswerWords(study, looked, piece, context))),
    ...curveWords(study, input.job, formatter),
    summaryWords(study, formatter),
    pointWords(first, piece, terms, formatter),
    ...curveFigures(first, piece, terms, context).map(({ name, text }) => `${name} ${text}`),
    soldWords(study, null, context),
    pricedWords(study.priced, 1, formatter),
  ];
}

function leversOf(input: JobInput, context: TextContext): readonly string[] {
  const formatter = formatterFor(context);
  return (['margin', 'payPerHour'] as const).flatMap((aim) => {
    const levers = leversAnswer(input, grid, { aim })?.levers ?? [];
    const { open } = sortedLevers(levers);
    return [
      ...levers.flatMap((lever) => [
        leverWords(lever, context),
        gainShort(lever, aim, formatter, context),
        gainWords(lever, formatter),
      ]),
      leverWords({ id: 'fillSpot', facts: { more: 1, quantity: 2, filled: 'pack' } }, context),
      ...[0, 1, 2, 3].map((count) => all(leverAnswer(open.slice(0, count), aim, context))),
    ];
  });
}

function chargesOf(input: JobInput, context: TextContext): readonly string[] {
  const formatter = formatterFor(context);
  const answer = chargesAnswer(input, grid);
  return [
    ...(answer?.charges ?? []).flatMap((charge) => {
      const ofOne =
        charge.id === 'fold'
          ? { ...charge, finishing: 1 }
          : charge.id === 'minimumOrder'
            ? { ...charge, covers: 1, paidByList: null }
            : charge;
      return [charge, ofOne].flatMap((one) => {
        const { name, says } = chargeWords(one, context.currency, formatter);
        return [name, says];
      });
    }),
    ...(['none', 'noCapacity'] as const).map((kind) =>
      rushWords({ wantedDays: 1, normalDays: 10, outcome: { kind } }, formatter),
    ),
    rushWords(null, formatter),
  ];
}

describe.each(jobs)('all that is said of %s', (_, input) => {
  it.each(contexts)('is without fault in $locale', (context) => {
    expect(sentencesOf(input, context).flatMap(wordFaults)).toEqual([]);
  });

  it('names no id', () => {
    const { job, workshop } = input;
    const ids = [
      ...workshop.printers,
      ...workshop.presses,
      ...job.lines.flatMap(({ placements }) => placements),
    ].flatMap(({ id }) => (/[-_]|\d/.test(id) ? [id] : []));
    const text = contexts.flatMap((context) => sentencesOf(input, context)).join('\n');
    expect(ids.filter((id) => new RegExp(`(?<![\\w-])${id}(?![\\w-])`).test(text))).toEqual([]);
  });
});

it('what a maker named keeps its letters in every sentence', () => {
  const [[, input] = []] = jobs;
  if (input === undefined) throw new Error('there is a first job');
  const text = contexts.flatMap((context) => sentencesOf(input, context)).join('\n');
  for (const name of Object.values(NAMES)) {
    expect(text).toContain(name);
    expect(text).not.toMatch(new RegExp(name.toLowerCase()));
    expect(text).not.toMatch(new RegExp(name.replace(/^./, (letter) => letter.toUpperCase())));
  }
});
