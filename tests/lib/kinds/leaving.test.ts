import { describe, expect, it } from 'vitest';
import { inkRecordOf } from '@/lib/ink/record/inkRecordOf';
import { readInkRecord } from '@/lib/ink/record/readInkRecord';
import { entryKinds } from '@/lib/kinds/entryKinds';
import { kinds } from '@/lib/kinds/kinds';
import { paperKinds } from '@/lib/kinds/paperKinds';
import { isAsIssued } from '@/lib/stored/isAsIssued';
import type { Leaving } from '@/lib/stored/leaving';
import { readBody } from '@/lib/stored/readBody';
import { sha256OfValue } from '@/lib/stored/sha256';
import priceList1 from '@/tests/fixtures/stored/priceList1.json' with { type: 'json' };
import workshop3 from '@/tests/fixtures/stored/workshop3.json' with { type: 'json' };
import { aVersion } from '@/tests/lib/priceLists/aVersion';

/* What a document held inside until a version of its shape: it becomes entries and papers, and nothing of it is lost. */

const step = (kind: 'workshop' | 'priceList', from: number, body: unknown): unknown =>
  (kinds[kind].steps as Readonly<Record<number, (body: unknown) => unknown>>)[from]?.(body);

const parted = (kind: 'workshop' | 'priceList', from: number, body: unknown): Leaving => {
  const parting = kinds[kind].partings?.[from];
  if (parting === undefined) throw new Error(`nothing leaves a ${kind} of version ${from}`);
  return parting(body, { id: priceList1.id, at: 1_795_600_000_000 });
};

const refill = (id: string, day: string, mL: number) => ({ id, day, mL });
const run = (id: string, day: string, prints: number, sessions: number) => ({
  id,
  day,
  name: 'Prints',
  prints,
  total: 1,
  widthMm: 254,
  heightMm: 254,
  sessions,
});

/** The printer of readInkRecord.test.ts: 0.0065 mL/in², 10 % loss, 4 mL a session. */
const record = {
  refills: [
    refill('a', '2026-01-01', 30),
    refill('b', '2026-02-01', 57.2 + 2 * 4),
    refill('c', '2026-03-01', 28.6 + 6 * 4),
    refill('d', '2026-04-01', 14.3 + 4),
  ],
  runs: [run('e', '2026-01-10', 80, 2), run('f', '2026-02-10', 40, 6), run('g', '2026-03-10', 20, 1)],
};
const workshop4 = (inkRecord: unknown) => ({ ...Object(step('workshop', 3, workshop3.body)), inkRecord });

const noon = (day: string) => Date.parse(`${day}T12:00:00Z`);
const FIVE_HOURS = 5 * 3_600_000;

describe('the ink record of a workshop of version 4', () => {
  it('leaves as refills and prints of their days, each of which reads as an entry of its kind', () => {
    const { entries, papers } = parted('workshop', 4, workshop4(record));
    expect(papers).toEqual([]);
    expect(entries.map(({ kind }) => kind)).toEqual([
      ...Array(4).fill('inkRefill'),
      ...Array(3).fill('inkPrints'),
    ]);
    for (const { kind, version, at, body } of entries) {
      const known = kind === 'inkRefill' ? entryKinds.inkRefill : entryKinds.inkPrints;
      const reading = readBody<{ readonly day: string }>(body, version, known);
      if (!reading.ok) throw new Error(JSON.stringify(reading.problem));
      expect(reading.value).toEqual(body);
      const apart = at - noon(reading.value.day);
      expect(apart).toBeGreaterThanOrEqual(0);
      expect(apart).toBeLessThan(FIVE_HOURS);
    }
    expect(entries[1]?.body).toEqual({ day: '2026-02-01', mL: 65.2 });
    expect(entries[5]?.body).toEqual({
      day: '2026-02-10',
      name: 'Prints',
      prints: 40,
      total: 1,
      widthMm: 254,
      heightMm: 254,
      sessions: 6,
      jobId: null,
    });
  });

  it('tells the same laydown, session loss and cleaning as before', () => {
    const { entries } = parted('workshop', 4, workshop4(record));
    const of = (kind: string) =>
      entries
        .filter((entry) => entry.kind === kind)
        .map((entry, index) => ({ ...entry, id: `${kind}-${index}`, device: 'd'.repeat(20), count: 1 }));
    const { fit, refilledMl, uncounted } = readInkRecord(
      inkRecordOf({ inkRefill: of('inkRefill'), inkPrints: of('inkPrints') } as never),
      { loss: 0.1, sessionMl: 1 },
    );
    if (fit.kind !== 'fitted') throw new Error(fit.kind);
    expect(fit.laydownMlPerIn2.value).toBeCloseTo(0.0065, 10);
    expect(fit.sessionMl.value).toBeCloseTo(4, 8);
    expect(fit.prints).toBe(140);
    expect(refilledMl).toBeCloseTo(136.1, 9);
    expect(uncounted).toEqual({ before: 0, after: 0 });
  });

  it('keeps two refills of one day that say the same apart', () => {
    const { entries } = parted(
      'workshop',
      4,
      workshop4({ refills: [refill('a', '2026-01-01', 30), refill('b', '2026-01-01', 30)], runs: [] }),
    );
    expect(new Set(entries.map(({ at }) => at)).size).toBe(2);
  });

  it('gives the same entries again from an older copy in which others stand', () => {
    const whole = parted('workshop', 4, workshop4(record)).entries;
    const older = parted('workshop', 4, workshop4({ ...record, refills: record.refills.slice(1) })).entries;
    expect(whole).toEqual(expect.arrayContaining([...older]));
  });

  it('leaves nothing behind in the workshop, nor anything else out of it', () => {
    const { inkRecord: _, ...rest } = workshop4(record);
    expect(step('workshop', 4, workshop4(record))).toEqual(rest);
    expect(readBody(workshop4(record), 4, kinds.workshop).ok).toBe(true);
  });

  it('stays where it is when it cannot be read, and the workshop is refused', () => {
    const broken = workshop4({ refills: 'lost', runs: [] });
    expect(step('workshop', 4, broken)).toEqual(broken);
    expect(parted('workshop', 4, broken)).toEqual({ entries: [], papers: [] });
    expect(readBody(broken, 4, kinds.workshop).ok).toBe(false);
  });
});

describe('the versions of a price list of version 2', () => {
  const { number: _, ...said } = aVersion();
  const held = [
    { ...said, number: 1, issuedOn: '2026-03-02' },
    { ...said, number: 2 },
  ];
  const list = (versions: unknown) => ({
    name: 'Shirts for clubs',
    from: '',
    notes: '',
    leadTime: '',
    validDays: 90,
    paper: 'a4',
    items: [],
    versions,
  });

  it('leave as papers that say what they said, under their old numbers without a letter', () => {
    const { entries, papers } = parted('priceList', 2, list(held));
    expect(entries).toEqual([]);
    expect(papers).toEqual([
      {
        kind: 'priceListVersion',
        version: 1,
        at: noon('2026-03-02'),
        series: 'priceList club-prices',
        number: { count: 1, letter: null },
        about: { kind: 'priceList', id: 'club-prices' },
        body: { ...said, issuedOn: '2026-03-02', number: { count: 1, letter: null } },
      },
      {
        kind: 'priceListVersion',
        version: 1,
        at: noon('2026-11-25'),
        series: 'priceList club-prices',
        number: { count: 2, letter: null },
        about: { kind: 'priceList', id: 'club-prices' },
        body: { ...said, number: { count: 2, letter: null } },
      },
    ]);
    for (const { body, version } of papers) {
      const reading = readBody(body, version, paperKinds.priceListVersion);
      expect(reading).toEqual({ ok: true, value: body });
    }
  });

  it('of lists that are older still keep their meaning: a cap acts on the price of each size', () => {
    const { papers } = parted('priceList', 2, step('priceList', 1, priceList1.body));
    const [shirts, caps] = priceList1.body.versions[0]?.items ?? [];
    expect(papers).toMatchObject([
      {
        body: {
          items: [
            { selling: 'capped', capOn: 'size', setUp: null, breaks: shirts?.breaks },
            { selling: 'setUpApart', setUp: { start: 13_181, each: 1270 }, breaks: caps?.breaks },
          ],
        },
      },
    ]);
  });

  it('leave the draft as it was', () => {
    const { versions: __, ...draft } = list(held);
    expect(readBody(list(held), 2, kinds.priceList)).toEqual({ ok: true, value: draft });
  });

  it('stay where they are when they cannot be read, and the list is refused', () => {
    for (const broken of [list('lost'), list([{ ...held[0], issuedOn: 'spring' }])]) {
      expect(step('priceList', 2, broken)).toEqual(broken);
      expect(parted('priceList', 2, broken).papers).toEqual([]);
      expect(readBody(broken, 2, kinds.priceList).ok).toBe(false);
    }
  });
});

describe('a paper', () => {
  it('is as it was issued until anything it says is another', () => {
    const sha256 = sha256OfValue(aVersion());
    expect(isAsIssued({ body: JSON.parse(JSON.stringify(aVersion())), sha256 })).toBe(true);
    expect(isAsIssued({ body: aVersion({ validUntil: '2027-02-24' }), sha256 })).toBe(false);
  });
});
