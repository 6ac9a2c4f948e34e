import { describe, expect, it } from 'vitest';
import { checkStallDay } from '@/lib/stall/check/checkStallDay';
import { addDays } from '@/shared/days';
import { type StallDay, stallDaySchema } from '@/shared/schemas/stallDay';
import { club } from '@/tests/fixtures/clubJob';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const [press] = club().workshop.presses;
if (press === undefined) throw new Error('no press');
const powered = (id: string, name: string, kw: number | null) => ({
  ...press,
  ...{ id, name },
  powerKw: kw === null ? null : ({ value: kw, unit: 'kW', date: TEST_DAY, origin: 'yours' } as const),
});
const presses = [
  powered('flat', 'Flat press', 1.4),
  powered('mug', 'Mug press', 0.35),
  powered('old', 'Old press', null),
];

const FAIR = addDays(TEST_DAY, 20);
const open = (day: string) => ({ id: day, day, fromMinute: 600, toMinute: 1020, weight: 1 });

const settled = { permit: { state: 'have' }, insurance: { state: 'notNeeded' } };

const found = (fields: Readonly<Record<string, unknown>>, today = TEST_DAY) =>
  checkStallDay({
    ...{ stallDayId: 'fair', presses, today },
    stallDay: stallDaySchema.parse({ name: 'Spring fair', days: [open(FAIR)], ...settled, ...fields }),
  });

const verdict = (fields: Readonly<Record<string, unknown>>, today?: string) =>
  found(fields, today)
    .map(({ id, severity, variant }) => `${id} ${severity} ${variant}`)
    .join(', ');

const power = (
  source: StallDay['power']['source'],
  pressIds: readonly string[],
  guaranteedWatts: number | null = null,
) => ({ power: { source, pressIds, guaranteedWatts } });

describe('ELE-03 holds the power at the stall against the presses used there', () => {
  it.each<[string, ReturnType<typeof power>, string]>([
    ['nothing is pressed there', power('battery', [], 100), ''],
    ['nothing is said at all', power('unset', []), ''],
    ['mains', power('mains', ['flat', 'mug']), ''],
    ['no power', power('none', ['flat']), 'ELE-03 stop noSource'],
    ['a source nobody named', power('unset', ['flat']), 'ELE-03 caution askSource'],
    ['a battery of unknown watts', power('battery', ['flat']), 'ELE-03 caution askWatts'],
    ['a generator of unknown watts', power('generator', ['flat']), 'ELE-03 caution askWatts'],
    // 1.4 kW and 0.35 kW are 1,750 W together.
    ['a battery of as much as both take', power('battery', ['flat', 'mug'], 1750), ''],
    ['one of a watt less', power('battery', ['flat', 'mug'], 1749), 'ELE-03 stop tooLittle'],
    ['a generator of a watt less', power('generator', ['flat', 'mug'], 1749), 'ELE-03 stop tooLittle'],
    ['enough for one of them alone', power('battery', ['mug'], 350), ''],
    ['a battery that gives nothing', power('battery', ['mug'], 0), 'ELE-03 stop tooLittle'],
    ['a press of unknown power at unknown watts', power('battery', ['old']), 'ELE-03 caution noPower'],
    ['a press of unknown power', power('battery', ['old'], 5000), 'ELE-03 caution noPower'],
    [
      'unknown power beside too much that is known',
      power('battery', ['flat', 'old'], 1000),
      'ELE-03 stop tooLittle, ELE-03 caution noPower',
    ],
    ['a press that is here no more', power('generator', ['sold'], 5000), 'ELE-03 caution pressGone'],
  ])('%s', (_, fields, expected) => expect(verdict(fields)).toBe(expected));

  it('tells watts of both sides, and no reason passes it', () => {
    expect(found(power('battery', ['flat', 'mug'], 1200))).toMatchObject([
      {
        facts: { source: 'battery', watts: 1750, guaranteed: 1200 },
        found: { value: 1200, unit: 'W' },
        limit: { value: 1750, unit: 'W' },
        where: { document: 'stallDay', id: 'fair', path: ['power', 'guaranteedWatts'] },
        waivable: false,
      },
    ]);
  });
});

describe('LAW-06 asks for permit and insurance', () => {
  const unset = { state: 'unset' };
  const until = (day: string) => ({ state: 'have', until: day });

  it.each<[string, Readonly<Record<string, unknown>>, string]>([
    ['both settled', {}, ''],
    ['neither asked', { permit: unset, insurance: unset }, 'LAW-06 caution both'],
    ['a permit nobody asked for', { permit: unset }, 'LAW-06 caution permit'],
    ['insurance nobody asked for', { insurance: unset }, 'LAW-06 caution insurance'],
    ['asked for, no answer yet', { permit: { state: 'asked' } }, ''],
    ['a permit to the last day', { permit: until(FAIR) }, ''],
    ['a permit to the day before', { permit: until(addDays(FAIR, -1)) }, 'LAW-06 caution permitEnds'],
    ['insurance to the day before', { insurance: until(addDays(FAIR, -1)) }, 'LAW-06 caution insuranceEnds'],
    [
      'a permit to the first of two days',
      { days: [open(addDays(FAIR, 1)), open(FAIR)], permit: until(FAIR) },
      'LAW-06 caution permitEnds',
    ],
    ['no day yet, so nothing can end too soon', { days: [], permit: until(TEST_DAY) }, ''],
  ])('%s', (_, fields, expected) => expect(verdict(fields)).toBe(expected));
});

describe('a stall day that does not come is not judged', () => {
  const bad = { permit: { state: 'unset' }, ...power('none', ['flat']) };

  it.each<[string, Readonly<Record<string, unknown>>, string, string]>([
    ['on its day', {}, FAIR, 'ELE-03 stop noSource, LAW-06 caution permit'],
    ['a day after', {}, addDays(FAIR, 1), ''],
    ['refused', { stage: 'refused' }, TEST_DAY, ''],
    ['called off', { stage: 'calledOff' }, TEST_DAY, ''],
    ['laid aside', { archivedOn: TEST_DAY }, TEST_DAY, ''],
  ])('%s', (_, fields, today, expected) => expect(verdict({ ...bad, ...fields }, today)).toBe(expected));
});
