import { describe, expect, it } from 'vitest';
import { amountWords } from '@/app/_words/amountWords';
import type { AnswerWords } from '@/app/_words/docket/answerWords';
import { checkAnswerWords, notesWords } from '@/app/_words/docket/checkAnswerWords';
import { checkGroups } from '@/app/_words/docket/checkGroups';
import { jobAnswerWords } from '@/app/_words/docket/jobAnswerWords';
import { leverAnswer, sortedLevers } from '@/app/_words/docket/leverAnswerWords';
import { sectionStates } from '@/app/_words/docket/sectionStates';
import { sellingAnswer } from '@/app/_words/docket/sellingWords';
import { sheetsAnswerWords } from '@/app/_words/docket/sheetWords';
import { upChargesWords } from '@/app/_words/docket/upChargesWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { priceJob } from '@/lib/costing/priceJob';
import { jobSheetFacts } from '@/lib/jobSheet/jobSheet';
import type { SoldWay } from '@/lib/studies/channels/channelsAnswer';
import type { Lever } from '@/lib/studies/levers/lever';
import { parseNumber } from '@/shared/parseNumber';
import type { JobInput } from '@/shared/schemas/request';
import { changed, club, clubWith, mugs, TODAY } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

const context: TextContext = { locale: 'en-US', units: club().workshop.units, currency: 'USD' };
const formatter = formatterFor(context);
const whole = ({ before = '', key, after = '' }: AnswerWords) => before + key + after;

/** The club order with as many lines of it, each with another name. */
function withLines(...names: readonly string[]): JobInput {
  const [line] = club().job.lines;
  return clubWith({
    'job.lines': names.map((name, index) => ({
      ...line,
      id: `line-${index}`,
      name,
      placements: line?.placements.map((placement) => ({ ...placement, id: `${placement.id}-${index}` })),
    })),
  });
}

const groupsOf = (input: JobInput) => checkGroups(priceJob(input, grid).findings, input.job, context);

describe('the answer of “The job”', () => {
  it('says how many of what, and where they are printed', () => {
    expect(jobAnswerWords(club(), formatter)).toEqual({
      key: '37 white shirts',
      after: ', printed on back and chest',
    });
  });

  it('says of mugs that they are printed all round', () => {
    expect(whole(jobAnswerWords(mugs(), formatter))).toMatch(
      /^\d+ white mugs in \d products, printed all round$/,
    );
  });

  it('asks for pieces where there are none', () => {
    expect(whole(jobAnswerWords(clubWith({ 'job.lines.0.quantities': [] }), formatter))).toBe(
      'No pieces yet: type how many shirts of each size',
    );
  });

  it('leaves colours out that differ, and names of capitals as they were typed', () => {
    expect(
      whole(jobAnswerWords(clubWith({ 'blank:white-shirt.colour.name': 'RAL 9010' }), formatter)),
    ).toMatch(/^37 RAL 9010 shirts/);
    expect(whole(jobAnswerWords(withLines('One', 'Two'), formatter))).toMatch(
      /^74 white shirts in 2 products, printed/,
    );
  });
});

describe('up-charges in words', () => {
  it('name each size with what it adds or takes off, and nothing for sizes that add nothing', () => {
    const charges = [
      { size: 'S', amount: 0 },
      { size: '2XL', amount: 1.5 },
      { size: 'XS', amount: -0.5 },
    ];
    expect(upChargesWords(charges, 'USD', 'en-US')).toBe('2XL\u00a0+1.50, XS\u00a0\u22120.50');
    expect(upChargesWords([], 'USD', 'en-US')).toBe('');
  });
});

describe('checks that say the same', () => {
  it('are told once, naming the lines', () => {
    const input = withLines('Ann', 'Ben', 'Cleo');
    const seams = groupsOf(input).filter(({ finding }) => finding.id === 'SUB-12');
    expect(seams).toHaveLength(1);
    expect(seams[0]?.all).toHaveLength(3);
    expect(seams[0]?.lines).toEqual(['Ann', 'Ben', 'Cleo']);
  });

  it('of one line name no line', () => {
    expect(groupsOf(club()).flatMap(({ lines }) => lines)).toEqual([]);
  });

  it('stay apart where what they say differs, and lose nothing', () => {
    const input = withLines('Ann', 'Ben');
    const { findings } = priceJob(input, grid);
    const groups = groupsOf(input);
    expect(groups.flatMap(({ all }) => all)).toHaveLength(findings.length);
    const said = groups.map(({ words, finding }) => JSON.stringify([words, finding.severity]));
    expect(new Set(said).size).toBe(said.length);
  });
});

describe('the answer of “Checks”', () => {
  it('says that nothing stops it, and how much there is to settle', () => {
    expect(whole(checkAnswerWords(groupsOf(club()), 0))).toBe('Nothing stops it. 2 things to settle');
    expect(whole(checkAnswerWords([], 0))).toBe('Nothing stops it.');
    expect(whole(checkAnswerWords([], 1))).toBe('Nothing stops it. 1 question');
  });

  it('names the stop', () => {
    const groups = groupsOf(clubWith({ 'job.lines.0.orderedQuantity': 38 }));
    expect(whole(checkAnswerWords(groups, 2))).toBe('1 stop: pieces in all. 2 things to settle, 2 questions');
  });

  it('names every note once in one line', () => {
    const notes = groupsOf(club()).filter(({ finding }) => finding.severity === 'note');
    expect(notesWords(notes)).toBe(
      '7 notes: seam, sharpness, shape, proof, free places, losses of several presses, arrival of blanks',
    );
  });
});

describe('the state of every section', () => {
  function states(input: JobInput, isChecked = true) {
    const { findings, costSheet, prices } = priceJob(input, grid);
    const checks = isChecked ? checkGroups(findings, input.job, context) : [];
    return sectionStates({ input, isChecked, checks, questions: 0, costSheet, prices }, context);
  }
  const texts = (of: ReturnType<typeof states>) => Object.values(of).map(({ text }) => text);

  it('is one figure of the worked example each', () => {
    // 11.13, 40.5 % and 56.26 are those of the worked example; 53 letter sheets stand in it too.
    expect(texts(states(club()))).toEqual([
      '37 shirts',
      '2 to settle',
      '53',
      '11.13 a shirt',
      expect.stringMatching(/^\d+\.\d\d to \d+\.\d\d$/),
      '40.5 % margin',
      '56.26 an hour',
      // One piece, 2 designs, a sample, 2 prints, name, folding, splitting, change, delivery, rush.
      '12 charges',
      '2 ways',
    ]);
  });

  it.each([
    ['one shirt', { 'job.lines.0.quantities': [{ size: 'L', quantity: 1 }] }],
    ['the worked example', {}],
  ])('counts sheets as their section and the job sheet do: %s', (_, fields) => {
    const input = changed(clubWith({ 'job.lines.0.orderedQuantity': null }), fields);
    const { layout, costSheet } = priceJob(input, grid);
    const paper = input.workshop.sheets.find(({ id }) => id === input.job.sheetId);
    if (costSheet === null || layout === null || paper === undefined) throw new Error('it has no sheets');
    const facts = { costs: costSheet, paper, used: null, wasteShare: null, ...context };
    const rail = states(input).sheets.text;
    expect(sheetsAnswerWords(facts, formatter).key).toMatch(new RegExp(`^${rail} letter sheets?$`));
    expect(String(jobSheetFacts(input, { layout, costSheet }).sheets)).toBe(rail);
  });

  it('says how much of a roll, as its section does', () => {
    const input = clubWith({
      'workshop.sheets.0.form': 'roll',
      'workshop.sheets.0.widthMm': 609.6,
      'workshop.sheets.0.heightMm': 1000,
      'workshop.sheets.0.price': { value: 1.2, unit: 'money/m', date: TODAY, origin: 'yours' },
    });
    expect(states(input).sheets.text).toMatch(/^\d+\.\d m$/);
  });

  it('calls for something to be done only where something is', () => {
    const calls = (input: JobInput) =>
      Object.entries(states(input)).flatMap(([id, { tone, count }]) =>
        tone === 'plain' ? [] : [[id, tone, count]],
      );
    expect(calls(club())).toEqual([['checks', 'todo', 2]]);
    expect(calls(clubWith({ 'job.lines.0.orderedQuantity': 38 }))).toEqual([['checks', 'stop', 1]]);
    expect(calls(clubWith({ 'job.lines.0.quantities': [] }))).toEqual([
      ['the-job', 'todo', 0],
      ['checks', 'stop', expect.any(Number)],
    ]);
  });

  it('waits behind a stop, and says nothing at all before the first check', () => {
    const stopped = changed(club(), { 'job.lines.0.orderedQuantity': 38 });
    expect(texts(states(stopped)).slice(2, 8)).toEqual(Array(6).fill('waits'));
    const { costSheet: _, prices: __, ...unchecked } = { ...priceJob(club(), grid), isChecked: false };
    const before = sectionStates(
      { ...unchecked, input: club(), checks: [], questions: 3, costSheet: null, prices: null },
      context,
    );
    expect(texts(before).slice(1, 8)).toEqual(Array(7).fill(''));
  });

  it('asks for answers where nothing else is to be done', () => {
    const { checks } = sectionStates(
      { input: club(), isChecked: true, checks: [], questions: 3, costSheet: null, prices: null },
      context,
    );
    expect(checks).toEqual({ text: '3 questions', tone: 'todo', count: 3 });
  });
});

describe('what would raise a job', () => {
  const before = { pieces: 10, fullCostEach: 20, targetEach: 30, profit: -100, margin: -1, payPerHour: -5 };
  const lever = (payPerHour: number, profit: number): Lever => ({
    id: 'nextPrice',
    facts: { step: 0.5 },
    changes: [],
    after: { ...before, profit },
    gain: { margin: payPerHour / 100, payPerHour, profit: profit - before.profit, savingEach: 0 },
  });

  it('leaves out what would be written as nothing, of an hour and of a margin', () => {
    const [small, large] = [lever(0.0049, 1), lever(0.006, 1)];
    expect(sortedLevers([large, small], 'payPerHour').open).toEqual([large]);
    // 0.006 ÷ 100 of the price are 0.006 points, 0.0049 ÷ 100 are 0.0049.
    expect(sortedLevers([large, small], 'margin').open).toEqual([large]);
  });

  it('says of a job that loses whatever is changed what to ask instead', () => {
    const open = [lever(1.2, -80)];
    expect(whole(leverAnswer(open, 'payPerHour', context, { profit: -100, ask: '144.50' }))).toBe(
      'Nothing small would mend it; ask 144.50',
    );
    expect(whole(leverAnswer(open, 'payPerHour', context, { profit: -100, ask: null }))).toBe(
      'Nothing small would mend it',
    );
    expect(whole(leverAnswer([lever(1.2, 5)], 'payPerHour', context, { profit: -1, ask: '144.50' }))).toBe(
      'About 1.20 more an hour from one small change',
    );
  });
});

describe('the ways of selling in one line', () => {
  const way = (kind: SoldWay['kind'], margin: number, payPerHour: number) =>
    ({ kind, margin, payPerHour }) as SoldWay;

  it('says that one pays less than it costs, rather than a loss beyond the whole price', () => {
    const order = way('order', 0.4, 50);
    expect(whole(sellingAnswer([order, way('wholesale', -9.45, -60)], 'en-US'))).toBe(
      'Own orders pay best; shops pay less than it costs',
    );
    expect(whole(sellingAnswer([order, way('consignment', -1.2, -60)], 'en-US'))).toBe(
      'Own orders pay best; consignment pays less than it costs',
    );
    expect(whole(sellingAnswer([order, way('wholesale', -0.12, 1)], 'en-US'))).toBe(
      'Own orders pay best; shops lose 12 %',
    );
  });
});

describe('a figure below nothing', () => {
  it('is written with the sign of a minus, which can be typed again', () => {
    expect(formatter.money(-61.2)).toBe('−61.20 USD');
    expect(formatter.share(-0.125)).toBe('−12.5 %');
    expect(amountWords(-5, 'USD', 'de-DE')).toBe('−5,00');
    expect(parseNumber(amountWords(-5, 'USD', 'de-DE'), 'de-DE')).toEqual({ kind: 'number', value: -5 });
  });
});
