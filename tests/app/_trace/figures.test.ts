import { describe, expect, it } from 'vitest';
import { figureName, figurePlace } from '@/app/_trace/figureName';
import { figureWords } from '@/app/_trace/figureWords';
import { whereSet } from '@/app/_trace/whereSet';
import type { FigureRef } from '@/lib/grid/traceFigure';
import type { Where } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { club, clubWith, mugs, TODAY } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

const input = club();
const names = { sheet: costed(input).sheet, input };
const context = { locale: 'en-US', currency: 'USD', units: input.workshop.units };

describe('figureWords', () => {
  it.each([
    [4.857, 'money', '4.857 USD'],
    [132.51, 'money', '132.51 USD'],
    [0.0096296, 'money', '0.00963 USD'],
    [18, 'money/h', '18.00 USD an hour'],
    [0.02, 'share', '2 %'],
    [1, 'pieces', '1 piece'],
    [39.124, 'pieces', '39.124 pieces'],
    [0.0535, 'kWh', '0.0535 kWh'],
    [1, 'yes or no', 'yes'],
    [0.051613, 'm2', '0.0516 m²'],
    [0, 'years', '0 years'],
  ])('writes %d %s as “%s”', (value, unit, text) => {
    expect(figureWords(value, unit, context)).toBe(text);
  });
});

describe('figureName', () => {
  const named = (rowId: string, ref: Partial<FigureRef> = { case: 2 }) => {
    const label = names.sheet.rows.find(({ id }) => id === rowId)?.label ?? rowId;
    return figureName(names, { rowId, ...ref }, label);
  };

  it.each([
    ['sheetsRun_2', 'Sheets for Chest badge, with replacements'],
    ['pressWear_1', 'Wear of press 1 (Back picture) in one press'],
    ['inkPerPrint_1', 'Ink of one Back picture'],
    ['ups_2', 'Prints of Chest badge on a sheet'],
    ['group_2', 'Pieces sharing the print size of Chest badge'],
    ['quantity', 'Pieces in L'],
    ['labour', 'Your time'],
  ])('calls %s “%s”', (rowId, name) => {
    expect(named(rowId)).toBe(name);
  });

  it('says of what a figure is', () => {
    expect(figurePlace(names, { rowId: 'labour', case: 2 })).toBe('one piece in L');
    expect(figurePlace(names, { rowId: 'labour' })).toBe('whole job');
    expect(figurePlace(names, { rowId: 'wage' })).toBe('');
  });
});

describe('whereSet', () => {
  it.each([
    ['the worked example', input],
    ['with a rate and rows of its own', withOwn()],
    ['mugs for a stall', mugs()],
  ])('leads every typed value to a field that is there: %s', (_, of) => {
    const { sheet } = costed(of);
    const refs = [
      ...Object.keys(sheet.inputs.job).map((rowId): FigureRef => ({ rowId })),
      ...sheet.inputs.lines.flatMap((column, line) => Object.keys(column).map((rowId) => ({ rowId, line }))),
      ...sheet.inputs.cases.flatMap((column, at) =>
        Object.keys(column).map((rowId) => ({ rowId, case: at })),
      ),
    ];
    const typed = refs.filter((ref) => inputOf(sheet.inputs, ref)?.origin !== 'counted');
    expect(typed.length).toBeGreaterThan(50);
    for (const ref of typed) {
      const setting = whereSet({ sheet, input: of }, ref);
      expect(setting && valueAt(of, setting.where), JSON.stringify(ref)).not.toBeUndefined();
      expect(setting, JSON.stringify(ref)).not.toBeNull();
    }
  });

  it('leads a rate of the job alone to the job, any other to the workshop', () => {
    const of = withOwn();
    const own = { sheet: costed(of).sheet, input: of };
    expect(whereSet(own, { rowId: 'wage' })?.where).toEqual({ document: 'job', path: ['rates', 'wage'] });
    expect(whereSet(own, { rowId: 'tariff' })?.where.document).toBe('workshop');
  });

  it('knows nobody who sets what the layout counts', () => {
    expect(whereSet(names, { rowId: 'ups_2', case: 0 })).toBeNull();
  });
});

function withOwn(): JobInput {
  const amount = { value: 12, unit: 'money', date: TODAY, origin: 'yours' };
  return clubWith({
    'job.rates.wage': { value: 24, unit: 'money/h', date: TODAY, origin: 'yours' },
    'job.ownRows': [
      { id: 'own_fee', label: 'Fee', outOfPocket: true, cost: { kind: 'driver', driver: 'order', amount } },
    ],
    'workshop.ownRows': [
      { id: 'own_pins', label: 'Pins', outOfPocket: true, cost: { kind: 'driver', driver: 'piece', amount } },
    ],
  });
}

function inputOf(inputs: typeof names.sheet.inputs, { rowId, line, case: at }: FigureRef) {
  if (line !== undefined) return inputs.lines[line]?.[rowId];
  return at === undefined ? inputs.job[rowId] : inputs.cases[at]?.[rowId];
}

function valueAt(of: JobInput, { document, id, path }: Where): unknown {
  const body =
    document === 'job'
      ? of.job
      : document === 'workshop'
        ? of.workshop
        : document === 'blank'
          ? of.blanks[id ?? '']
          : of.artworks[id ?? ''];
  return path.reduce<unknown>((part, key) => (part as Record<string | number, unknown>)?.[key], body);
}
