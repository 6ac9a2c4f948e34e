import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { priceJob } from '@/lib/costing/priceJob';
import { jobWithBlank } from '@/lib/drafts/jobWithBlank';
import { newJob } from '@/lib/drafts/newJob';
import { newParts } from '@/lib/drafts/newParts';
import { startingBlankNames } from '@/lib/examples/blankPatterns';
import { clubOrder } from '@/lib/examples/clubOrder';
import { freshWorkshop } from '@/lib/examples/freshWorkshop';
import { regionOf } from '@/lib/examples/regionOf';
import { startingBlank } from '@/lib/examples/startingBlanks';
import { Grid } from '@/lib/grid/evaluateGrid';
import type { Blank } from '@/shared/schemas/blank';
import type { JobInput } from '@/shared/schemas/request';
import { jobInputSchema } from '@/shared/schemas/request';
import { setIn } from '@/shared/setIn';

const DAY = '2026-11-25';
const grid = new Grid();

/** A workshop with a press of every kind, in inches or in centimetres. */
function equipped(language: string) {
  const region = regionOf(language);
  const part = newParts(DAY, region);
  const workshop = freshWorkshop(DAY, region);
  const presses = [
    ...workshop.presses,
    part.press('mug-press', 'Mug press', 'mug'),
    part.press('tumbler-press', 'Tumbler press', 'tumbler'),
  ];
  return { region, workshop: { ...workshop, presses } };
}

function jobOn(from: Blank, workshop: JobInput['workshop']): JobInput {
  const blank = { id: 'from', body: from };
  const { job, artwork } = newJob({ name: 'Job', day: DAY, workshop, blank, artworkId: 'a' });
  return {
    asOf: DAY,
    workshop,
    blanks: { from },
    artworks: { a: artwork },
    job,
    onHand: {},
    approvedVersions: {},
  };
}

function moved(input: JobInput, to: Blank): JobInput {
  const { blanks, job, workshop } = input;
  const line = job.lines[0];
  const from = blanks[line?.blankId ?? ''];
  return {
    ...input,
    blanks: { ...blanks, to },
    job: jobWithBlank(job, {
      lineId: line?.id ?? '',
      from,
      to: { id: 'to', body: to },
      workshop,
      day: DAY,
    }),
  };
}

const stops = (input: JobInput) =>
  checkJob(input).findings.flatMap(({ id, severity }) => (severity === 'stop' ? [id] : []));

describe.each(['en-US', 'de-DE'])('jobWithBlank, for %s', (language) => {
  const { region, workshop } = equipped(language);

  it.each(startingBlankNames)(
    'makes a job on a %s one on any other blank: no stop stands, and it has a price',
    (name) => {
      const input = jobOn(startingBlank(name, DAY, region), workshop);
      expect(stops(input)).toEqual([]);
      for (const other of startingBlankNames) {
        const after = moved(input, startingBlank(other, DAY, region));
        expect(jobInputSchema.parse(after)).toEqual(after);
        expect(stops(after), `${name} to ${other}`).toEqual([]);
        expect(priceJob(after, grid).prices?.targetTotal, `${name} to ${other}`).toBeGreaterThan(0);
      }
    },
  );
});

describe('jobWithBlank', () => {
  const { region, workshop } = equipped('en-US');
  const shirt = startingBlank('shirt', DAY, region);
  const mug = startingBlank('mug', DAY, region);
  const shirts = jobOn(shirt, workshop);

  it('brings press, recipe, place, size, minutes and name of a mug', () => {
    const line = moved(shirts, mug).job.lines[0];
    expect(line).toMatchObject({
      name: 'White coated mug, 11 oz',
      quantities: [{ size: '11 oz', quantity: 12 }],
    });
    // 360 to 400 °F and 150 to 300 s in the middle; 8.5 × 3.6 in less five per cent, down to quarters.
    expect(line?.placements).toMatchObject([
      {
        name: 'Print round it',
        position: 'wrap',
        pressId: 'mug-press',
        recipe: { temperature: { value: 380, unit: 'F' }, dwellSeconds: 225, preheatSeconds: null },
        prints: [{ sizes: null, widthMm: 203.2, heightMm: 82.55 }],
        aloneMinutes: { value: 2.6 },
      },
    ]);
  });

  it('keeps the number of pieces and what the maker named, and asks for the price of the other thing', () => {
    const before = [
      { path: ['lines', 0, 'name'], value: 'Club night' },
      { path: ['lines', 0, 'placements', 0, 'name'], value: 'Crest' },
      { path: ['lines', 0, 'askedPrice'], value: 19 },
      { path: ['lines', 0, 'quantities'], value: [{ size: 'L', quantity: 30 }] },
    ].reduce((job, { path, value }) => setIn(job, path, value), shirts.job);
    const [line] = moved({ ...shirts, job: before }, mug).job.lines;
    expect(line).toMatchObject({
      name: 'Club night',
      askedPrice: null,
      quantities: [{ size: '11 oz', quantity: 30 }],
    });
    expect(line?.placements[0]).toMatchObject({ name: 'Crest', artworkId: 'a' });
  });

  it.each(['Back picture', 'Chest badge', 'Left sleeve logo'])(
    'calls a print on a mug no longer “%s”, which names a place of a shirt',
    (name) => {
      const job = setIn(shirts.job, ['lines', 0, 'placements', 0, 'name'], name);
      expect(moved({ ...shirts, job }, mug).job.lines[0]?.placements[0]?.name).toBe('Print round it');
      const performance = startingBlank('performance', DAY, region);
      expect(moved({ ...shirts, job }, performance).job.lines[0]?.placements[0]?.name).toBe(name);
    },
  );

  it('leaves prints, price and press alone on another shirt, and follows with a recipe nobody changed', () => {
    const asked = setIn(shirts.job, ['lines', 0, 'askedPrice'], 19);
    const performance = startingBlank('performance', DAY, region);
    const [line] = moved({ ...shirts, job: asked }, performance).job.lines;
    const [before] = asked.lines;
    expect(line?.askedPrice).toBe(19);
    expect(line?.quantities).toEqual(before?.quantities);
    // Performance cloth: 375 to 395 °F, 30 to 45 s, light.
    expect(line?.placements[0]?.recipe).toMatchObject({
      temperature: { value: 385, unit: 'F' },
      dwellSeconds: 40,
      pressure: 'light',
    });
    const own = setIn(asked, ['lines', 0, 'placements', 0, 'recipe', 'dwellSeconds'], 50);
    expect(moved({ ...shirts, job: own }, performance).job.lines[0]?.placements[0]?.recipe.dwellSeconds).toBe(
      50,
    );
  });

  it('keeps as many prints of the example as the other thing has places', () => {
    const club = clubOrder(DAY, '2026-12-11');
    const onto = (name: 'tote' | 'mug') => {
      const after = moved(club, startingBlank(name, DAY, region));
      return { stops: stops(after), places: after.job.lines[0]?.placements.map(({ position }) => position) };
    };
    expect(onto('tote')).toEqual({ stops: [], places: ['front', 'back'] });
    expect(onto('mug')).toEqual({ stops: [], places: ['wrap'] });
  });

  it('has no line to change and changes nothing', () => {
    const change = { lineId: 'none', from: shirt, to: { id: 'm', body: mug }, workshop, day: DAY };
    expect(jobWithBlank(shirts.job, change)).toBe(shirts.job);
  });

  it('leaves without a press for mugs one stop, whose button adds a typical one and gives a price', () => {
    const bare = { ...workshop, presses: workshop.presses.slice(0, 1) };
    const input = moved({ ...shirts, workshop: bare }, mug);
    expect(stops(input)).toEqual(['PLC-09']);
    const fix = checkJob(input).findings.find(({ id }) => id === 'PLC-09')?.fix;
    expect(fix).toMatchObject({ label: 'addPress', facts: { kind: 'mug' } });
    const mended = (fix?.changes ?? []).reduce(
      (all, { document, path, value }) => setIn(all, [document, ...path], value),
      input,
    );
    expect(mended.workshop.presses.map(({ id }) => id)).toEqual(['press-1', 'mug-press']);
    expect(stops(mended)).toEqual([]);
    expect(priceJob(mended, grid).prices?.targetTotal).toBeGreaterThan(0);
  });
});
