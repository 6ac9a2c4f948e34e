import { describe, expect, it } from 'vitest';
import { freeName } from '@/lib/drafts/freeName';
import { jobsMaking } from '@/lib/drafts/jobsMaking';
import { renameSize } from '@/lib/drafts/renameSize';
import { exampleDocuments } from '@/lib/examples/exampleDocuments';
import type { JobLink } from '@/lib/kinds/job/jobLinks';
import { kinds } from '@/lib/kinds/kinds';
import { userNames, usersOf } from '@/lib/kinds/usersOf';

const examples = exampleDocuments('2026-11-25');
const stored = examples.map((one) => ({ ...one, version: 1, revision: 1, updatedAt: 1 }));
const jobs = examples.flatMap((document) => (document.kind === 'job' ? [document.body] : []));
const [club] = jobs;
const namesOf = (found: typeof jobs) => found.map(({ name }) => name);

describe('usersOf', () => {
  it.each<[JobLink['to'], string, number]>([
    ['printer', 'desk-printer', 3],
    ['sheet', 'letter', 3],
    ['channel', 'stall', 2],
    ['packaging', 'mug-box', 1],
    ['blank', 'white-shirt', 2],
    ['press', 'mug-press', 1],
    ['artwork', 'club-crest', 1],
    ['press', 'nowhere', 0],
  ])('finds the jobs that stand on the %s %s', (to, id, count) => {
    const found = usersOf(kinds, stored, { to, id });
    expect(found.filter(({ kind }) => kind === 'job')).toHaveLength(count);
    expect(found.filter(({ kind }) => kind !== 'job' && kind !== 'stallDay')).toEqual([]);
  });

  it('finds the stall day that is sold by a way of selling and made by a job', () => {
    const fairs = (link: Pick<JobLink, 'to' | 'id'>) =>
      usersOf(kinds, stored, link).filter(({ kind }) => kind === 'stallDay');
    expect(fairs({ to: 'channel', id: 'stall' }).map(({ id }) => id)).toEqual(['spring-fair']);
    expect(fairs({ to: 'channel', id: 'own-orders' })).toEqual([]);
  });

  it('finds the price list and the order that follow a job, by their names', () => {
    expect(userNames(kinds, stored, { to: 'job', id: 'club-order' })).toEqual([
      'Shirts and mugs for clubs',
      'Ramblers Club shirts',
    ]);
  });
});

describe('jobsMaking', () => {
  it('finds jobs with pieces in a size, and none where nothing is ordered in it', () => {
    expect(namesOf([...jobsMaking(jobs, { blankId: 'white-mug', size: '11 oz' })])).toEqual([
      'Spring Fair mugs',
    ]);
    expect(jobsMaking(jobs, { blankId: 'white-shirt', size: '11 oz' })).toEqual([]);
  });
});

describe('renameSize', () => {
  it('leaves a job that does not name the size the same object', () => {
    if (club === undefined) throw new Error('the examples have a job');
    expect(renameSize(club, { blankId: 'white-mug', from: 'S', to: 'Small' })).toBe(club);
    expect(renameSize(club, { blankId: 'white-shirt', from: '4XL', to: '5XL' })).toBe(club);
  });

  it('follows the name through quantities, up-charges and prints', () => {
    if (club === undefined) throw new Error('the examples have a job');
    const lines = club.lines.map((line) => ({
      ...line,
      placements: line.placements.map((placement) => ({
        ...placement,
        prints: placement.prints.map((print) => ({ ...print, sizes: ['S', '2XL'] })),
      })),
    }));
    const [line] = renameSize({ ...club, lines }, { blankId: 'white-shirt', from: '2XL', to: 'XXL' }).lines;
    expect(line?.quantities.map(({ size }) => size)).toEqual(['S', 'M', 'L', 'XL', 'XXL', '3XL']);
    expect(line?.upCharges.map(({ size }) => size)).toEqual(['XXL', '3XL']);
    expect(line?.placements[0]?.prints[0]?.sizes).toEqual(['S', 'XXL']);
  });
});

describe('freeName', () => {
  it.each([
    ['A4 sheet', [], 'A4 sheet'],
    ['A4 sheet', ['A4 sheet'], 'A4 sheet 2'],
    ['A4 sheet', ['A4 sheet', 'A4 sheet 2'], 'A4 sheet 3'],
  ])('%s among %j is %s', (wanted, taken, free) => expect(freeName(wanted, taken)).toBe(free));

  it('stays within the letters a document takes', () => {
    const long = 'x'.repeat(200);
    expect(freeName(long, [freeName(long, [])]).length).toBeLessThanOrEqual(120);
  });
});
