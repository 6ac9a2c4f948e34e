import { describe, expect, it } from 'vitest';
import { askedWords, listAssumesWords } from '@/app/_words/docket/pricesWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import type { AskedAgainstList } from '@/lib/price/list/askedAgainstList';
import type { MinorUnits } from '@/shared/money';
import { club } from '@/tests/fixtures/clubJob';

const context: TextContext = { locale: 'en-US', units: club().workshop.units, currency: 'USD' };
const voice = { context, currency: 'USD', piece: { one: 'shirt', many: 'shirts' } };

const asks = (asked: number | null): AskedAgainstList => ({
  n: 37,
  listEach: 1900 as MinorUnits,
  start: null,
  held: null,
  asked: asked as MinorUnits | null,
  over: ((asked ?? 1900) - 1900) as MinorUnits,
  sums: { byList: (37 * 1900) as MinorUnits, ofJob: (37 * (asked ?? 1900)) as MinorUnits, areAdded: false },
  sizes: [],
});

describe('what a job asks beside its list', () => {
  it('is told as less where it is the only line', () => {
    expect(askedWords(asks(1600), false, voice)).toBe('This job asks 16.00, 3.00 under the list.');
  });

  it('may be less with other lines, which is said', () => {
    expect(askedWords(asks(1600), true, voice)).toBe(
      'This job asks 16.00, 3.00 under the list: its lines share one set-up.',
    );
    expect(askedWords(asks(null), true, voice)).toBe(
      'By the list a shirt of this job is 19.00; its lines share one set-up, so it can be less.',
    );
  });

  it('names the start beside the piece where set-up is apart', () => {
    const apart = { ...asks(1250), listEach: 1250 as MinorUnits, over: 0 as MinorUnits };
    const started = (asked: number) => ({
      ...apart,
      start: { listed: 13_200 as MinorUnits, asked: asked as MinorUnits },
    });
    expect(askedWords(started(13_200), false, voice)).toBe(
      'This job asks 132.00 to start and 12.50 a shirt, as the list does.',
    );
    expect(askedWords(started(0), false, voice)).toBe(
      'This job asks 12.50 a shirt, nothing to start; the list 132.00 to start and 12.50 a shirt.',
    );
    expect(askedWords({ ...started(0), asked: null }, false, voice)).toBe(
      'By the list this job is 132.00 to start and 12.50 a shirt.',
    );
  });

  it('is no matter of the set-up where it is more', () => {
    expect(askedWords(asks(2000), true, voice)).toBe('This job asks 20.00, 1.00 over the list.');
  });
});

describe('what the prices of a list take for granted', () => {
  const said = (rule: 'capped' | 'onePrice', isOneOfSeveral: boolean) =>
    listAssumesWords(rule, isOneOfSeveral, 0.3, formatterFor(context));

  it('is an order of one line alone where the job has several', () => {
    expect(said('capped', true)).toMatch(
      /^Each price is for one piece in an order of that many of this line alone,/,
    );
  });

  it('is the batch with the other lines where it is made to stock', () => {
    expect(said('onePrice', true)).toMatch(
      /batch of that many of this line, .*; other lines, rates and the drive stay/,
    );
  });

  it('names no other line where there is none', () => {
    expect(said('capped', false)).not.toMatch(/other line|alone/);
  });
});
