import { beforeAll, describe, expect, it } from 'vitest';
import { costLineIds } from '@/lib/grid/costLines';
import { caseValue, wholeJob } from '@/lib/grid/costSheet';
import { present } from '@/lib/grid/present';
import { fromMinor, shownParts, toMinor } from '@/shared/money';
import { type DrawnJobs, drawJobs, hold, PATIENCE } from '@/tests/fixtures/drawnJobs';
import { draws } from '@/tests/tools/cases';
import { near } from './near';

const JOBS = 300;
let drawn: DrawnJobs = { seed: 0, jobs: [] };

beforeAll(() => {
  drawn = drawJobs(JOBS);
}, PATIENCE.timeout);

describe('of random jobs', () => {
  it(`at least ${JOBS} are drawn`, () => {
    expect(drawn.jobs.length).toBeGreaterThanOrEqual(draws(JOBS));
  });

  it('at every press as many pieces enter as are to come out good, or more', () => {
    hold(drawn, ({ job: { sheet, laidOut } }) => {
      for (const [at, one] of sheet.cases.entries()) {
        const line = laidOut.job.lines.find(({ line: { id } }) => id === one.lineId);
        line?.placements.forEach((_, index) => {
          expect(caseValue(sheet, `entering_${index + 1}`, at)).toBeGreaterThanOrEqual(1);
        });
        expect(caseValue(sheet, 'blanksDrawn', at)).toBeGreaterThanOrEqual(
          caseValue(sheet, 'entering_1', at),
        );
      }
    });
  });

  it('the sheets have room for every print, and no sheet is begun without need', () => {
    hold(drawn, ({ job: { laidOut } }) => {
      for (const { sheets, perSheet, pieces, spare } of laidOut.prints) {
        expect(sheets * perSheet).toBe(pieces + spare);
        expect(spare).toBeGreaterThanOrEqual(0);
        expect(spare).toBeLessThan(perSheet);
      }
    });
  });

  it('the grid buys the sheets that were laid out', () => {
    hold(drawn, ({ job: { sheet, laidOut } }) => {
      const { lines } = laidOut.job;
      const tests = laidOut.prints.map(({ lineId, placementId, pieces, sheetWorth }) => {
        const line = lines.find(({ line: { id } }) => id === lineId);
        const one = line?.placements.find(({ placement: { id } }) => id === placementId);
        const made = total(line?.sizes.map(({ quantity }) => quantity) ?? []);
        return ((one?.placement.testPresses ?? Number.NaN) * sheetWorth * pieces) / made;
      });
      const sheets = laidOut.prints.map((print) => print.sheets * print.sheetWorth);
      near(wholeJob(sheet, 'sheetsBase'), total([...sheets, ...tests]));
    });
  });

  it('the target price leaves exactly the margin aimed for', () => {
    hold(drawn, ({ job: { sheet } }) => {
      const margin = present(sheet.jobValues, 'targetMargin');
      const feeShare = present(sheet.jobValues, 'feeShare');
      for (const at of sheet.cases.keys()) {
        const target = caseValue(sheet, 'target', at);
        const fees = target * feeShare + caseValue(sheet, 'cardFixed', at);
        expect(Math.abs((target - fees - caseValue(sheet, 'fullCost', at)) / target - margin)).toBeLessThan(
          1e-9,
        );
      }
    });
  });

  it('the margin shown where no price is asked is the one aimed for', () => {
    let seen = 0;
    hold(drawn, ({ job: { sheet, laidOut } }) => {
      if (laidOut.job.lines.some(({ line }) => line.askedPrice !== null)) return;
      seen += 1;
      expect(Math.abs(wholeJob(sheet, 'margin') - present(sheet.jobValues, 'targetMargin'))).toBeLessThan(
        1e-9,
      );
    });
    expect(seen).toBeGreaterThan(draws(JOBS) / 20);
  });

  it('the cost lines add to full cost, for a piece of each size and for the whole job', () => {
    hold(drawn, ({ job: { sheet } }) => {
      for (const at of sheet.cases.keys()) {
        near(caseValue(sheet, 'fullCost', at), total(costLineIds.map((id) => caseValue(sheet, id, at))));
      }
      near(wholeJob(sheet, 'fullCost'), total(costLineIds.map((id) => wholeJob(sheet, id))));
    });
  });

  it('pieces times cost of a piece add to the whole job, line by line', () => {
    hold(drawn, ({ job: { sheet } }) => {
      for (const id of [
        ...costLineIds,
        'fullCost',
        'cash',
        'incrementalCost',
        'attended',
        'sheets',
        'inkMl',
      ]) {
        const sizes = sheet.cases.map(({ quantity }, at) => quantity * caseValue(sheet, id, at));
        near(wholeJob(sheet, id), total(sizes));
      }
    });
  });

  it('floors and target of the pieces add to those of the whole job', () => {
    hold(drawn, ({ job: { sheet } }) => {
      for (const id of ['outOfPocketFloor', 'variableFloor', 'target', 'fees']) {
        near(
          wholeJob(sheet, id),
          total(sheet.cases.map(({ quantity }, at) => quantity * caseValue(sheet, id, at))),
        );
      }
    });
  });

  it('normal spoilage is what expected use adds to the baseline', () => {
    const spoiled = ['blanks', 'paper', 'ink', 'supplies', 'electricity', 'wear', 'labour', 'overhead'];
    hold(drawn, ({ job: { sheet } }) => {
      const gaps = spoiled.map((id) => wholeJob(sheet, `${id}Expected`) - wholeJob(sheet, id));
      near(wholeJob(sheet, 'spoilage'), total(gaps));
      expect(Math.min(...gaps)).toBeGreaterThan(-1e-9);
    });
  });

  it('the floors stand in their order below full cost with its fees', () => {
    hold(drawn, ({ job: { sheet } }) => {
      const afterFees = 1 - present(sheet.jobValues, 'feeShare');
      const full = (wholeJob(sheet, 'fullCost') + wholeJob(sheet, 'cardFixed')) / afterFees;
      const marks = [wholeJob(sheet, 'outOfPocketFloor'), wholeJob(sheet, 'variableFloor'), full];
      expect(marks).toEqual(marks.toSorted((a, b) => a - b));
    });
  });

  it.each(['USD', 'JPY', 'KWD'])(
    'in %s the shown cost lines add to the shown full cost, to the digit',
    (currency) => {
      hold(drawn, ({ job: { sheet } }) => {
        const lines = costLineIds.map((id) => wholeJob(sheet, id));
        const shown = shownParts(sheet.fullCost, lines, currency);
        expect(total(shown)).toBe(toMinor(sheet.fullCost, currency));
        const unit = fromMinor(toMinor(1, currency), currency) / toMinor(1, currency);
        shown.forEach((part, at) => {
          expect(Math.abs(fromMinor(part, currency) - (lines[at] ?? 0))).toBeLessThan(unit * (1 + 1e-9));
        });
      });
    },
  );

  it('paid and unattended minutes add to the time that passes', () => {
    hold(drawn, ({ job: { sheet } }) => {
      near(wholeJob(sheet, 'elapsed'), wholeJob(sheet, 'attended') + wholeJob(sheet, 'unattended'));
    });
  });
});

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
