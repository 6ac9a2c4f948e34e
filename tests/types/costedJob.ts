import { type CostedJob, costJob } from '@/lib/grid/costJob';
import type { CostSheet } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { CheckedJob, ResolvedJob } from '@/lib/job/checkedJob';
import { type LaidOutJob, layOutJob } from '@/lib/layout/layOutJob';
import { priceTable } from '@/lib/price/priceTable';
import { rulerMarks } from '@/lib/price/rulerMarks';
import { formatMinor, type MinorUnits, splitMinor, toMinor } from '@/shared/money';
import { type Minutes, type Mm, minutes, mm, mmFromInches } from '@/shared/units';

declare const resolved: ResolvedJob;
declare const checked: CheckedJob;
declare const grid: Grid;
declare const sheet: CostSheet;
declare const laidOut: LaidOutJob;

// @ts-expect-error a checked job that is not laid out cannot be costed
costJob(checked, grid);

// @ts-expect-error nor one that nobody has checked
costJob({ job: resolved, prints: [] }, grid);

// @ts-expect-error nobody outside lib/sheets can write the mark of a laid out job
const handLaid: LaidOutJob = { job: checked, prints: [], laidOut: true };

// @ts-expect-error nobody outside lib/grid can write the mark of a costed job
const handCosted: CostedJob = { laidOut, sheet, costed: true };

// @ts-expect-error a cost sheet alone has no prices
priceTable(sheet, grid);

// @ts-expect-error a job without its sums has no ruler
rulerMarks(laidOut);

// @ts-expect-error the sums may have come out faulty, and that must be looked at first
priceTable(costJob(laidOut, grid).job, grid);

const result = costJob(layOutJob(checked), grid);
if (result.kind === 'costed') priceTable(result.job, grid);

// @ts-expect-error minutes are no length
const length: Mm = minutes(3);

// @ts-expect-error a length is no time
const time: Minutes = mmFromInches(3);

// @ts-expect-error a plain number has no unit
const bare: Mm = 3;

// @ts-expect-error a plain number is no amount of minor units
formatMinor(300, 'JPY', 'en-US');

// @ts-expect-error nor may it be split
splitMinor(100, [1, 1]);

// @ts-expect-error an amount already in minor units is no length
const money: Mm = toMinor(3, 'USD');

const right: Mm = mm(3);
const cents: MinorUnits = toMinor(3, 'USD');

// @ts-expect-error lists of a cost sheet are read only
sheet.cases.push(sheet.cases[0]);

// @ts-expect-error and so are its values
sheet.fullCost = 0;

export { bare, cents, handCosted, handLaid, length, money, right, time };
