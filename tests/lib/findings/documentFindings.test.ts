import { describe, expect, it } from 'vitest';
import { findingWords } from '@/app/_words/findings/findingWords';
import { documentFindings } from '@/lib/findings/documentFindings';
import { jobInputSchema } from '@/shared/schemas/request';
import { club } from '@/tests/fixtures/clubJob';

const context = {
  locale: 'en',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
} as const;

/** The worked example as JSON with one field written anew; undefined takes it out. */
function broken(path: string, value: unknown): unknown {
  const document: unknown = JSON.parse(JSON.stringify(club()));
  const steps = path.split('.');
  const last = steps.pop() ?? '';
  const parent = steps.reduce<unknown>((at, step) => Reflect.get(Object(at), step), document);
  if (value === undefined) Reflect.deleteProperty(Object(parent), last);
  else Reflect.set(Object(parent), last, value);
  return document;
}

function findingsOf(value: unknown) {
  const { error } = jobInputSchema.safeParse(value);
  return error === undefined ? [] : documentFindings(error, 'request', { value });
}

describe('documentFindings tells what a schema refused', () => {
  it.each([
    ['cap', 'capped'],
    ['tariff', 'setUpApart'],
  ])('says what a rule of earlier files is called now: %s is %s', (before, now) => {
    const [finding] = findingsOf(broken('job.lines.0.selling', before));
    if (finding === undefined) throw new Error('it was read');
    const { detail } = findingWords(finding, context);
    expect(detail).toContain(`“${before}” is now called “${now}”: write that.`);
    expect(findingsOf(broken('job.lines.0.selling', now))).toEqual([]);
  });

  it.each([
    ['job.name', undefined, 'missing', 'Name of the job of the file is missing.'],
    ['blanks', undefined, 'missing', 'List of blanks of the file is missing.'],
    ['job.lines', undefined, 'missing', 'List of lines of the job of the file is missing.'],
    [
      'job.lines.0.quantities.2.quantity',
      '11',
      'wrongType',
      'Quantity of quantity 3 of line 1 of the job of the file must be a number, and is text.',
    ],
    [
      'job.lines.0.quantities.2.quantity',
      -1,
      'tooSmall',
      'Quantity of quantity 3 of line 1 of the job of the file must be at least 0.',
    ],
    [
      'job.lines.0.quantities.2.quantity',
      1e6,
      'tooLarge',
      'Quantity of quantity 3 of line 1 of the job of the file must be at most 100,000.',
    ],
    [
      'job.lines.0.placements.0.prints.0.widthMm',
      0,
      'tooSmall',
      'Width in mm of print size 1 of placement 1 of line 1 of the job of the file must be at least 0.01.',
    ],
    [
      'job.lines.0.placements.0.recipe.temperature.unit',
      'K',
      'badChoice',
      'Unit of temperature of recipe of placement 1 of line 1 of the job of the file is none of the values it may have.',
    ],
    [
      'workshop.rates.wage.unit',
      'EUR/h',
      'badChoice',
      'Unit of “Your pay” (wage) of rates of the workshop of the file is none of the values it may have.',
    ],
    [
      'workshop.rates.wage.date',
      '2026-02-30',
      'badForm',
      'Date of “Your pay” (wage) of rates of the workshop of the file is not in the form it needs.',
    ],
    [
      'workshop.policy.breaks',
      [1.5],
      'notWhole',
      'Price break 1 of policy of the workshop of the file must be a whole number.',
    ],
    [
      'workshop.currency',
      'XYZ',
      'refused',
      'Currency of the workshop of the file is not a currency code of ISO 4217 with a minor unit.',
    ],
    [
      'job.wantedBy',
      '2026-01-01',
      'unknownKey',
      '“wantedBy” is no field known there: wanted by of the job of the file.',
    ],
    [
      'blanks.white-shirt.sizes.2.onHand',
      3,
      'movedKey',
      '“onHand” is not part of it any more: on hand of size 3 of “white-shirt” of the blanks of the file.',
    ],
    [
      'artworks.hill-path.approvedVersion',
      1,
      'movedKey',
      '“approvedVersion” is not part of it any more: approved version of “hill-path” of the artworks of the file.',
    ],
    ['blanks.bad id!', {}, 'badKey', '“bad id!” cannot be the name of an entry.'],
    ['job.lines', [], 'tooFew', 'List of lines of the job of the file must hold at least 1.'],
    ['job.name', '', 'tooShort', 'Name of the job of the file needs at least 1 character.'],
    ['job.name', 'x'.repeat(121), 'tooLong', 'Name of the job of the file may have 120 characters at most.'],
    [
      'artworks.hill-path.coverage',
      { kind: 'huge' },
      'badChoice',
      'Kind of coverage of “hill-path” of the artworks of the file is none of the values it may have.',
    ],
  ])('%s = %s: %s', (path, value, variant, sentence) => {
    const [finding] = findingsOf(broken(path, value));
    expect(finding).toMatchObject({ id: 'DOC-01', severity: 'stop', variant, waivable: false });
    if (finding === undefined) return;
    const words = findingWords(finding, context);
    expect(words.sentence).toBe(sentence);
    expect(words.detail).toMatch(/^[A-Z].*[.”]$/);
  });

  it('says where the file holds now what stood in a blank or an artwork', () => {
    const detail = (path: string) => {
      const [finding] = findingsOf(broken(path, 1));
      return finding === undefined ? '' : findingWords(finding, context).detail;
    };
    expect(detail('blanks.white-shirt.sizes.2.onHand')).toContain(
      'write it at onHand.white-shirt.L of the file.',
    );
    expect(detail('artworks.hill-path.approvedVersion')).toContain(
      'at approvedVersions.hill-path of the file.',
    );
    expect(detail('job.onHand')).not.toContain('write it at');
  });

  it.each([null, undefined, 3, 'text', [], true])('reads no document in %s', (value) => {
    const [finding] = findingsOf(value);
    expect(finding?.id).toBe('DOC-01');
    if (finding !== undefined) expect(findingWords(finding, context).sentence).toMatch(/^The file /);
  });

  it('collects all problems, not the first alone', () => {
    const twice = broken('job.name', 3);
    Reflect.set(Object(Reflect.get(Object(twice), 'workshop')), 'name', 3);
    expect(findingsOf(twice)).toHaveLength(2);
  });

  it('lists a hundred and counts the rest', () => {
    const extra = Object.fromEntries(Array.from({ length: 150 }, (_, index) => [`extra${index}`, 1]));
    const findings = findingsOf({ ...club(), ...extra });
    expect(findings).toHaveLength(101);
    expect(findings.at(-1)).toMatchObject({ variant: 'more', facts: { count: 50 } });
  });

  it('tells of eight thousand problems as fast as of a hundred', () => {
    const artworks = Object.fromEntries(Array.from({ length: 8_000 }, (_, index) => [`extra${index}`, 1]));
    const request = { ...club(), artworks: { ...club().artworks, ...artworks } };
    const { error } = jobInputSchema.safeParse(request);
    if (error === undefined) throw new Error('the documents were accepted');
    const before = process.cpuUsage();
    const findings = documentFindings(error, 'request', { value: request });
    const { user } = process.cpuUsage(before);
    expect(findings).toHaveLength(101);
    expect(findings.at(-1)).toMatchObject({ variant: 'more', facts: { count: 7_900 } });
    // It takes 2 ms; looking through all entries for each of them took a minute.
    expect(user / 1000).toBeLessThan(200);
  });

  it('counts unknown fields and other problems together', () => {
    const extra = Object.fromEntries(Array.from({ length: 99 }, (_, index) => [`extra${index}`, 1]));
    const artworks = { ...club().artworks, a: 1, b: 2, c: 3 };
    const findings = findingsOf({ ...club(), artworks, ...extra });
    expect(findings).toHaveLength(101);
    expect(findings.at(-1)).toMatchObject({ variant: 'more', facts: { count: 2 } });
  });

  it('repeats no name longer than any that could be meant', () => {
    const long = 'x'.repeat(900_000);
    const findings = findingsOf({ ...club(), [long]: 1, artworks: { ...club().artworks, [long]: 1 } });
    expect(findings.length).toBeGreaterThan(1);
    expect(JSON.stringify(findings).length).toBeLessThan(5_000);
  });

  it('clips what it repeats', () => {
    const [finding] = findingsOf(broken('job.madeFor', 'x'.repeat(5000)));
    expect(finding?.facts).toMatchObject({ found: expect.stringMatching(/^x{60,69}…$/) });
  });

  it('tells missing from wrong without holding the document, too', () => {
    const { error } = jobInputSchema.safeParse(broken('job.name', undefined));
    expect(error && documentFindings(error, 'request')[0]?.variant).toBe('missing');
  });
});
