import { describe, expect, it } from 'vitest';
import type { AnswerWords } from '@/app/_words/docket/answerWords';
import { pieceOfJob } from '@/app/_words/docket/jobAnswerWords';
import {
  askedWords,
  ladderWords,
  leastWords,
  pricesAnswer,
  ruleWords,
  stepWords,
} from '@/app/_words/docket/pricesWords';
import { effectWords, remedyWords } from '@/app/_words/docket/remedyWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { askedAgainstList } from '@/lib/price/list/askedAgainstList';
import { ladderOf } from '@/lib/price/list/ladder';
import { type BreaksAnswer, breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import type { MinorUnits } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';
import { clubWith, mugsWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { contexts } from '@/tests/tools/words/contexts';
import { wordFaults } from '@/tests/tools/words/wordFaults';

/** Every rule of selling, and the list that falls, whose remedies are told. */
const jobs: readonly (readonly [string, JobInput])[] = [
  ['a capped list', clubWith({})],
  ['a list that falls', clubWith({ 'job.lines.0.selling': 'asListed', 'job.lines.0.breaks': [1, 2, 24] })],
  ['set-up apart', clubWith({ 'job.lines.0.selling': 'setUpApart' })],
  ['one price', mugsWith({})],
  ['a list for one shirt', clubWith({ 'job.lines.0.quantities': [{ size: 'S', quantity: 1 }] })],
];

const all = ({ before = '', key, after = '' }: AnswerWords): string => `${before}${key}${after}`;

const answersOf = (input: JobInput): readonly BreaksAnswer[] =>
  input.job.lines
    .slice(0, 1)
    .flatMap(({ id }) => breaksAnswer(input, grid, { lineId: id, quantities: [1] }) ?? []);

function sentencesOf(
  input: JobInput,
  answers: readonly BreaksAnswer[],
  context: TextContext,
): readonly string[] {
  const formatter = formatterFor(context);
  const voice = { context, currency: context.currency, piece: pieceOfJob(input) };
  return answers.flatMap((answer) => {
    const line = input.job.lines.find(({ id }) => id === answer.lineId);
    if (line === undefined) return [];
    const { list, staircase, remedies, tariff } = answer;
    const format = {
      formatter,
      currency: context.currency,
      locale: context.locale,
      sizes: list.sizes.map(({ size }) => size),
    };
    return [
      all(pricesAnswer(list, staircase.falls, voice)),
      ...ladderOf(list).map((step) => stepWords(step, list.rule)),
      ladderWords(list.sizes, 'added', voice),
      leastWords(list, 0.3, formatter),
      ruleWords({ n: 1, as: 4, pays: 40, instead: 60 }, voice),
      ...[1, 2, 37].flatMap((n) => {
        const asked = askedAgainstList(
          line,
          list,
          { n, listEach: list.breaks[0]?.each ?? (0 as MinorUnits) },
          context.currency,
        );
        return asked === null ? [] : [askedWords(asked, voice)];
      }),
      ...remedies.flatMap((offer) => [
        ...Object.values(remedyWords(offer, tariff?.written ?? null, voice.piece.one, format)),
        effectWords(offer, format),
        // The order of one piece is the one that changes.
        effectWords(
          { ...offer, effects: offer.effects.slice(0, 1).map((one) => ({ ...one, n: 1 })) },
          format,
        ),
        ...Object.values(
          remedyWords(
            {
              ...offer,
              dropped: 1,
              breaks: [{ from: 1, each: 1250 as MinorUnits }],
            },
            tariff?.written ?? null,
            voice.piece.one,
            format,
          ),
        ),
      ]),
    ];
  });
}

describe.each(jobs)('all that is said of %s', (_, input) => {
  const answers = answersOf(input);

  it.each(contexts)('is without fault in $locale', (context) => {
    const sentences = sentencesOf(input, answers, context);
    expect(sentences.length).toBeGreaterThan(5);
    expect(sentences.flatMap(wordFaults)).toEqual([]);
  });
});
