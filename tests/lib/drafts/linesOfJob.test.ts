import { describe, expect, it } from 'vitest';
import { lineOfBlank } from '@/lib/drafts/lineOfBlank';
import { withCopyOfLine } from '@/lib/drafts/withCopyOfLine';
import { jobSchema, type Line } from '@/shared/schemas/job';
import { club } from '@/tests/fixtures/clubJob';

const { job } = club();
const [line] = job.lines;
if (line === undefined) throw new Error('the example has a line');
const named = (name: string): Line => ({ ...line, name });
const mug = { id: 'white-mug', name: 'White mug' };

describe('lineOfBlank', () => {
  it.each([
    ['the blank it was made on', 'White shirt', 'White mug'],
    ['that blank with a number behind', 'White shirt 2', 'White mug'],
    ['nothing yet', 'First line', 'White mug'],
    ['a place among lines', 'Line 3', 'White mug'],
    ['what the maker calls it', 'Club shirt', 'Club shirt'],
    ['more than the blank', 'White shirt for Ann', 'White shirt for Ann'],
  ])('named after %s, “%s” becomes “%s”', (_, before, after) => {
    const moved = lineOfBlank(named(before), 'White shirt', mug, []);
    expect(moved).toEqual({ ...line, blankId: 'white-mug', name: after });
  });

  it('takes a name that no other line has', () => {
    expect(lineOfBlank(named('White shirt'), 'White shirt', mug, ['White mug']).name).toBe('White mug 2');
  });

  it('keeps its name where nobody knows what the old blank was called', () => {
    expect(lineOfBlank(named('White shirt'), null, mug, []).name).toBe('White shirt');
  });
});

describe('withCopyOfLine', () => {
  let count = 0;
  const makeId = () => {
    count += 1;
    return `new-${count}`;
  };

  it('puts a line behind itself with all it has, but a name and ids of its own', () => {
    const two = withCopyOfLine(job, line.id, makeId);
    const [first, copy] = two.lines;
    expect(first).toEqual(line);
    expect(copy?.name).toBe('Club shirt 2');
    expect(
      new Set([first, copy].flatMap((one) => [one?.id, ...(one?.placements ?? []).map(({ id }) => id)])).size,
    ).toBe(6);
    const sameNames = (one: Line | undefined) => ({
      ...one,
      id: '',
      name: '',
      placements: one?.placements.map((placement) => ({ ...placement, id: '' })),
    });
    expect(sameNames(copy)).toEqual(sameNames(line));
    expect(jobSchema.parse(two)).toEqual(two);
  });

  it('numbers on where copies are copied', () => {
    const two = withCopyOfLine(job, line.id, makeId);
    const three = withCopyOfLine(two, two.lines[1]?.id ?? '', makeId);
    expect(three.lines.map(({ name }) => name)).toEqual(['Club shirt', 'Club shirt 2', 'Club shirt 3']);
  });

  it('leaves a job alone that has no such line', () => {
    expect(withCopyOfLine(job, 'nobody', makeId)).toBe(job);
  });
});
