import { describe, expect, it } from 'vitest';
import { blankChangeWords } from '@/app/_words/docket/blankChangeWords';
import { formatterFor } from '@/app/_words/formatter';
import { jobWithBlank } from '@/lib/drafts/jobWithBlank';
import { clubWith, mugs, TODAY } from '@/tests/fixtures/clubJob';

const input = clubWith({ 'job.lines.0.askedPrice': 19 });
const { workshop, blanks, job } = input;
const formatter = formatterFor({ locale: 'en-US', units: workshop.units, currency: 'USD' });
const [line] = job.lines;
if (line === undefined) throw new Error('the club order has a line');

function onto(id: string): string {
  const body = mugs().blanks[id];
  if (body === undefined || line === undefined) throw new Error(`there is no ${id}`);
  const from = blanks[line.blankId];
  const after = jobWithBlank(job, { lineId: line.id, from, to: { id, body }, workshop, day: TODAY }).lines[0];
  return blankChangeWords(line, after ?? line, from, formatter);
}

describe('what undo says of another blank', () => {
  it('names what went with a shirt that becomes a mug: names of prints, a print, the price', () => {
    expect(onto('white-mug')).toBe(
      'Blank of Club shirt; “Back picture” is now “Print round it”; “Chest badge” is taken off; the asked 19.00 USD was for a shirt',
    );
  });

  it('is short where nothing went with it', () => {
    expect(blankChangeWords(line, line, blanks[line.blankId], formatter)).toBe('Blank of Club shirt');
  });
});
