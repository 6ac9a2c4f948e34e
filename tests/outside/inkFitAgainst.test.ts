import { Decimal } from 'decimal.js';
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { type Fitted, fitInkRecord } from '@/lib/ink/record/fitInkRecord';
import type { InkInterval } from '@/lib/ink/record/inkIntervals';
import { studentT95 } from '@/lib/ink/record/studentT';

const LOSS = 0.1;
const LAYDOWN = 0.0065;
const SESSION_ML = 4;

/** Park and Miller's generator (Communications of the ACM 31, 1988): the same records on every machine. */
function drawsFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** Refills of a printer with known figures, each read with a normal error of 2 mL (Box and Muller). */
function noisyRecord(draw: () => number, refills: number): readonly InkInterval[] {
  return Array.from({ length: refills }, () => {
    const inkAreaIn2 = 6000 + 12_000 * draw();
    const sessions = 1 + Math.floor(10 * draw());
    const error = 2 * Math.sqrt(-2 * Math.log(draw())) * Math.cos(2 * Math.PI * draw());
    const refillMl = inkAreaIn2 * LAYDOWN * (1 + LOSS) + sessions * SESSION_ML + error;
    return { inkAreaIn2, sessions, refillMl, prints: 100 };
  });
}

/**
 * Least squares in fifty digits by another way than the normal equations: ink area is made square to sessions
 * first, then each slope is read off alone. Rests come to the errors of both.
 */
function independentFit(record: readonly InkInterval[]) {
  const Exact = Decimal.clone({ precision: 50 });
  const dot = (a: readonly Decimal[], b: readonly Decimal[]) =>
    a.reduce((sum, value, index) => sum.plus(value.times(b[index] ?? 0)), new Exact(0));
  const column = (name: keyof InkInterval) => record.map((each) => new Exact(each[name]));
  const slopeOf = (own: readonly Decimal[], other: readonly Decimal[]) => {
    const step = dot(own, other).div(dot(other, other));
    const left = own.map((value, index) => value.minus(step.times(other[index] ?? 0)));
    return { value: dot(left, refill).div(dot(left, left)), size: dot(left, left) };
  };
  const refill = column('refillMl');
  const area = column('inkAreaIn2');
  const sessions = column('sessions');
  const laydown = slopeOf(area, sessions);
  const session = slopeOf(sessions, area);
  const rests = refill.map((value, index) =>
    value.minus(laydown.value.times(area[index] ?? 0)).minus(session.value.times(sessions[index] ?? 0)),
  );
  const variance = dot(rests, rests).div(record.length - 2);
  return {
    laydown: laydown.value.div(1 + LOSS).toNumber(),
    laydownError: variance
      .div(laydown.size)
      .sqrt()
      .div(1 + LOSS)
      .toNumber(),
    session: session.value.toNumber(),
    sessionError: variance.div(session.size).sqrt().toNumber(),
  };
}

function fitted(record: readonly InkInterval[]) {
  const fit = fitInkRecord(record, { loss: LOSS, sessionMl: 1 });
  if (fit.kind !== 'fitted' || fit.of !== 'both') throw new Error('Both were to be told apart.');
  return fit;
}

const reachOf = ({ value, range }: Fitted): number => (range?.to ?? Number.NaN) - value;

describe('the fit of an ink record', () => {
  it('agrees with an independent least squares to nine digits, and its ranges with another Student t', () => {
    const draw = drawsFrom(20_261_125);
    for (let refills = 4; refills <= 40; refills += 1) {
      const record = noisyRecord(draw, refills);
      const mine = fitted(record);
      const other = independentFit(record);
      expect(mine.laydownMlPerIn2.value / other.laydown).toBeCloseTo(1, 9);
      expect(mine.sessionMl.value / other.session).toBeCloseTo(1, 9);
      const t = jStat.studentt.inv(0.975, refills - 2);
      expect(reachOf(mine.laydownMlPerIn2) / (t * other.laydownError)).toBeCloseTo(1, 3);
      expect(reachOf(mine.sessionMl) / (t * other.sessionError)).toBeCloseTo(1, 3);
    }
  });

  it('tells ranges that hold the true figures 19 times of 20', () => {
    const draw = drawsFrom(7);
    const records = 2000;
    const holds = (range: Fitted['range'], value: number) =>
      range !== null && range.from <= value && value <= range.to;
    let laydowns = 0;
    let sessions = 0;
    for (let index = 0; index < records; index += 1) {
      const { laydownMlPerIn2, sessionMl } = fitted(noisyRecord(draw, 8));
      laydowns += holds(laydownMlPerIn2.range, LAYDOWN) ? 1 : 0;
      sessions += holds(sessionMl.range, SESSION_ML) ? 1 : 0;
    }
    // Four standard deviations of a count of 2,000 at 95 % are 1.95 %.
    expect(Math.abs(laydowns / records - 0.95)).toBeLessThan(0.0195);
    expect(Math.abs(sessions / records - 0.95)).toBeLessThan(0.0195);
  });
});

it('studentT95 agrees with a statistics library for 1 to 200 degrees of freedom', () => {
  for (let freedom = 1; freedom <= 200; freedom += 1)
    expect(Math.abs(studentT95(freedom) / jStat.studentt.inv(0.975, freedom) - 1)).toBeLessThan(3e-4);
});
