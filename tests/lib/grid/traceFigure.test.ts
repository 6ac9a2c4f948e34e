import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clubOrder } from '@/lib/examples/clubOrder';
import { exampleFiles } from '@/lib/examples/exampleFiles';
import type { CostSheet } from '@/lib/grid/costSheet';
import { type FigureRef, type Trace, traceFigure } from '@/lib/grid/traceFigure';
import { costed } from '@/tests/fixtures/costed';
import { randomJob } from '@/tests/fixtures/randomJob';
import { cases, patience } from '@/tests/tools/cases';
import { evaluateParts } from './evaluateParts';

const { sheet } = costed(clubOrder('2026-11-25', '2026-12-11'));

const keyOf = ({ rowId, case: at, line }: FigureRef) => `${rowId} ${at ?? ''} ${line ?? ''}`;

/** Every figure that can be opened from one, by opening each operand in turn. */
function openAll(of: CostSheet, from: FigureRef): ReadonlyMap<string, Trace> {
  const seen = new Map<string, Trace>();
  const waiting = [from];
  for (let ref = waiting.pop(); ref !== undefined; ref = waiting.pop()) {
    if (seen.has(keyOf(ref))) continue;
    const trace = traceFigure(of, ref);
    if (trace === null) throw new ReferenceError(`${keyOf(ref)} cannot be opened`);
    seen.set(keyOf(ref), trace);
    for (const part of trace.parts) if (part.kind === 'operand') waiting.push(part.ref);
  }
  return seen;
}

/** Traces whose parts do not come to their figure, or whose operands are not the figures they open to. */
function faultsOf(of: CostSheet, from: FigureRef): readonly string[] {
  const all = openAll(of, from);
  return [...all.values()].flatMap((trace) => {
    if (trace.kind === 'typed') return trace.input === undefined ? [`${keyOf(trace.ref)} has no origin`] : [];
    const value = evaluateParts(trace.parts);
    const slack = 1e-9 * Math.max(1e-3, Math.abs(trace.value));
    const wrong =
      Math.abs(value - trace.value) <= slack ? [] : [`${keyOf(trace.ref)}: ${value}, not ${trace.value}`];
    const strange = trace.parts.flatMap((part) =>
      part.kind === 'operand' && all.get(keyOf(part.ref))?.value !== part.value
        ? [`${keyOf(part.ref)} is another figure when it is opened`]
        : [],
    );
    return [...wrong, ...strange];
  });
}

describe('a figure opened down to what was typed', () => {
  it.each(Object.entries(exampleFiles()))('comes to its value at every step in %s', (_, input) => {
    const job = costed(input).sheet;
    expect(faultsOf(job, { rowId: 'fullCost' })).toEqual([]);
    expect(faultsOf(job, { rowId: 'profit' })).toEqual([]);
    expect(faultsOf(job, { rowId: 'payPerHour', case: job.cases.length - 1 })).toEqual([]);
  });

  it('comes to its value in every row of random jobs of several lines', { timeout: patience(60_000) }, () => {
    fc.assert(
      fc.property(randomJob({ lines: 2, placements: 2, presses: 2, own: 'formulas' }), (input) => {
        const job = costed(input).sheet;
        for (const row of job.rows) {
          if (row.table !== 'case' || row.formula === null) continue;
          expect(faultsOf(job, { rowId: row.id, case: job.cases.length - 1 })).toEqual([]);
          if (row.total !== undefined) expect(faultsOf(job, { rowId: row.id })).toEqual([]);
        }
      }),
      cases(5),
    );
  });

  it('reaches from the full cost of the job and of a piece to everything typed but what only the price needs', () => {
    // What is shared cancels out of the whole job, and stands in the cost of a piece.
    const reached = [{ rowId: 'fullCost' }, { rowId: 'fullCost', case: 0 }].flatMap((from) => [
      ...openAll(sheet, from).values(),
    ]);
    const leaves = new Set(reached.filter(({ kind }) => kind === 'typed').map(({ ref }) => ref.rowId));
    const typed = sheet.rows.filter(({ formula }) => formula === null).map(({ id }) => id);
    const forThePrice = [
      'targetMargin',
      'tax',
      'taxInside',
      'commission',
      'commissionOnTax',
      'cardFee',
      'cardFixedFee',
      'cardShare',
      'cardPayments',
      'isStall',
      'piecesPerTicket',
      'askedPrice',
      'askedStart',
    ];
    // Unattended minutes cost nothing.
    const unpaid = ['aloneMinutes_1', 'aloneMinutes_2'];
    // A cut sheet is a sheet, artwork is prepared once, and nobody set minutes of selling: that is not said.
    const silent = ['sheetWorth_1', 'sheetWorth_2', 'newDesign_1', 'newDesign_2', 'sellingMinutes'];
    expect(typed.filter((id) => !leaves.has(id)).toSorted()).toEqual(
      [...forThePrice, ...unpaid, ...silent].toSorted(),
    );
  });

  it('opens your time of the whole job to your pay and to minutes that make its sum, each to what was typed', () => {
    const labour = traceFigure(sheet, { rowId: 'labour' });
    // The worked example by hand: 18 an hour × (97 + 45 + 35 + 264.7) minutes ÷ 60 is 132.51.
    const minutes = ['orderTime', 'designTime', 'sessionTime', 'runTimeBase'].map(
      (id) => operandOf(labour, id).value,
    );
    expect(operandOf(labour, 'wage').value).toBe(18);
    expect(minutes.map((one) => Number(one.toFixed(1)))).toEqual([97, 45, 35, 264.7]);
    expect(labour?.parts.every((part) => part.kind !== 'operand' || part.ref.case === undefined)).toBe(true);
    const order = traceFigure(sheet, operandOf(labour, 'orderTime').ref);
    expect(
      order?.parts.flatMap((part) => (part.kind === 'operand' ? [[part.ref.rowId, part.value]] : [])),
    ).toEqual([
      ['enquiryMinutes', 40],
      ['proofMinutes', 15],
      ['packMinutes', 12],
      ['deliverMinutes', 30],
    ]);
  });

  it('adds what shirts of each size cost and the freight of all, where a whole job is opened', () => {
    const blanks = traceFigure(sheet, { rowId: 'blanks' });
    expect(blanks?.parts.at(-1)).toMatchObject({ kind: 'operand', ref: { rowId: 'freightIn' } });
  });

  it('is opened four levels down to the minutes of a press and to the day they were set', () => {
    const labour = traceFigure(sheet, { rowId: 'labour', case: 2 });
    const attended = operandOf(labour, 'attendedBase');
    const run = operandOf(traceFigure(sheet, attended.ref), 'runTimeBase');
    const hands = operandOf(traceFigure(sheet, run.ref), 'handMinutes_1');
    const typed = traceFigure(sheet, hands.ref);
    expect(typed).toMatchObject({
      kind: 'typed',
      value: 2.4,
      unit: 'min',
      input: { origin: 'yours', date: '2026-11-25' },
    });
  });

  it('keeps what was typed beside a value held in another unit', () => {
    const laydown = traceFigure(sheet, { rowId: 'laydown' });
    expect(laydown?.input?.typed).toEqual({ value: 0.0065, unit: 'mL/in2' });
    expect(laydown?.unit).toBe('mL/m2');
    const travel = traceFigure(sheet, { rowId: 'travelRate' });
    expect(travel?.input?.typed).toEqual({ value: 0.6, unit: 'money/mi' });
  });

  it('names each size where it adds up a whole job', () => {
    const whole = traceFigure(sheet, { rowId: 'blanks' });
    const sizes = whole?.parts.flatMap((part) =>
      part.kind === 'operand' && part.ref.rowId === 'quantity' ? [part.label] : [],
    );
    expect(sizes).toEqual(['S', 'M', 'L', 'XL', '2XL', '3XL'].map((size) => `Pieces in ${size}`));
  });

  it.each<[string, FigureRef]>([
    ['a row that is not there', { rowId: 'nothing' }],
    ['a size that is not there', { rowId: 'blanks', case: 99 }],
    ['the whole-job value of a row that has none', { rowId: 'inkPerPrint_1' }],
    ['a line that is not there', { rowId: 'enter_1', line: 9 }],
  ])('is null for %s', (_, ref) => {
    expect(traceFigure(sheet, ref)).toBeNull();
  });
});

function operandOf(trace: Trace | null, rowId: string) {
  const part = trace?.parts.find((one) => one.kind === 'operand' && one.ref.rowId === rowId);
  if (part?.kind !== 'operand') throw new ReferenceError(`${trace?.label} does not name ${rowId}`);
  return part;
}
