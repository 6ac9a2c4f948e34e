import { describe, expect, it } from 'vitest';
import { type FigureNames, figureName } from '@/app/_trace/figureName';
import { whereSet } from '@/app/_trace/whereSet';
import { exampleFiles } from '@/lib/examples/exampleFiles';
import { withCostGroups } from '@/lib/grid/costGroups';
import type { CostSheet } from '@/lib/grid/costSheet';
import { type FigureRef, type Trace, traceFigure } from '@/lib/grid/traceFigure';
import type { Where } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { costed } from '@/tests/fixtures/costed';
import { evaluateParts } from '@/tests/lib/grid/evaluateParts';

const keyOf = ({ rowId, case: at, line }: FigureRef) => `${rowId} ${at ?? ''} ${line ?? ''}`;

/** Every figure of the sheet: each row for each size and for the whole job. */
const everyFigure = (sheet: CostSheet): readonly FigureRef[] =>
  sheet.rows
    .filter(({ table }) => table === 'case')
    .flatMap(({ id, total }): readonly FigureRef[] => [
      ...sheet.cases.map((_, at) => ({ rowId: id, case: at })),
      ...(total === undefined ? [] : [{ rowId: id }]),
    ]);

/** All that is met on the way down from some figures. */
function walk(sheet: CostSheet, from: readonly FigureRef[]): readonly Trace[] {
  const met = new Map<string, Trace>();
  const waiting = [...from];
  for (let ref = waiting.pop(); ref !== undefined; ref = waiting.pop()) {
    if (met.has(keyOf(ref))) continue;
    const trace = traceFigure(sheet, ref);
    if (trace === null) throw new ReferenceError(`${keyOf(ref)} cannot be opened`);
    met.set(keyOf(ref), trace);
    for (const part of trace.parts) if (part.kind === 'operand') waiting.push(part.ref);
  }
  return [...met.values()];
}

describe.each(Object.entries(exampleFiles()))('every figure of the cost sheet of %s', (_, input) => {
  const names: FigureNames = { sheet: withCostGroups(costed(input).sheet), input };
  const traces = walk(names.sheet, everyFigure(names.sheet));

  it('opens to parts that come to it', () => {
    const opened = traces.filter(({ kind }) => kind !== 'typed');
    expect(opened.length).toBeGreaterThan(300);
    const wrong = opened.filter(({ value, parts }) => {
      const made = evaluateParts(parts);
      return !(Math.abs(made - value) <= 1e-9 * Math.max(1e-3, Math.abs(value)));
    });
    expect(wrong.map(({ ref }) => keyOf(ref))).toEqual([]);
  });

  it('ends at values that were typed, each with its place, or at counts that say of what', () => {
    const leaves = traces.filter(({ kind }) => kind === 'typed');
    expect(leaves.length).toBeGreaterThan(60);
    const lost = leaves.filter(({ ref, input: given }) => {
      const setting = whereSet(names, ref);
      if (setting !== null) return valueAt(input, setting.where) === undefined;
      return given === undefined || given.origin !== 'counted' || (given.about ?? '') === '';
    });
    expect(lost.map(({ ref }) => keyOf(ref))).toEqual([]);
  });

  it('calls every part by a name and never by the id of its row', () => {
    const parts = traces.flatMap((trace) => trace.parts);
    const ids = new Set(names.sheet.rows.map(({ id }) => id));
    const bare = parts.filter(
      (part) => part.kind === 'operand' && ids.has(figureName(names, part.ref, part.label)),
    );
    expect(bare).toEqual([]);
  });
});

// Helpers

function valueAt(of: JobInput, { document, id = '', path }: Where): unknown {
  const bodies: Readonly<Record<string, unknown>> = {
    job: of.job,
    workshop: of.workshop,
    blank: of.blanks[id],
    artwork: of.artworks[id],
  };
  return path.reduce<unknown>(
    (part, key) => (part as Record<string | number, unknown> | undefined)?.[key],
    bodies[document],
  );
}
