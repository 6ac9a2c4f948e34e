import { describe, expect, it } from 'vitest';
import { troublePlace } from '@/app/_stallDay/troublePlace';
import { stallTroubleWords } from '@/app/_words/stall/troubleWords';
import type { StallTrouble } from '@/lib/stall/plan/stallPlanned';
import { fairAsked } from '@/tests/fixtures/fairAsked';

const { stallDay, workshop } = fairAsked;
const { channels } = workshop;
const formatter = { share: String, number: String };

describe('what a plan asks leads to its field', () => {
  it('of the way of selling that the day has, which its address opens', () => {
    const at = channels.findIndex(({ id }) => id === stallDay.channelId);
    expect(at).toBeGreaterThan(0);
    const place = (what: Extract<StallTrouble, { kind: 'channelLacks' }>['what'], taxMode: 'inside' | null) =>
      troublePlace(
        { kind: 'channelLacks', what },
        stallDay,
        channels.map((one) => ({ ...one, taxMode })),
      );
    expect(place('cardShare', 'inside')).toEqual({ href: `/workshop#workshop-channels-${at}-cardShare` });
    expect(place('tax', 'inside')).toEqual({ href: `/workshop#workshop-channels-${at}-tax` });
    expect(place('tax', null)).toEqual({ href: `/workshop#workshop-channels-${at}-taxMode` });
  });

  it('of the sizes of its goods, and says what is wrong with them and not with their parts', () => {
    const of = { rangeId: 'mugs', range: 'Mugs' };
    for (const trouble of [
      { kind: 'noMix', ...of } as const,
      { kind: 'noSizes', ...of, design: 'Fern' } as const,
    ]) {
      expect(troublePlace(trouble, stallDay, channels)).toEqual({ field: 'stall-ranges-1-sizes' });
      expect(stallTroubleWords(trouble, formatter)).toMatch(/sizes?/);
      expect(stallTroubleWords(trouble, formatter)).not.toMatch(/parts/);
    }
  });
});
