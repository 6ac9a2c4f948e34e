import fc from 'fast-check';
import { expect, it } from 'vitest';
import { entriesInForce } from '@/lib/stored/entriesInForce';
import { takesBackHereOnly } from '@/lib/stored/takeBack';
import { travellingEntries } from '@/lib/stored/travellingEntries';
import type { Entry } from '@/shared/schemas/happened';
import { anEntry } from '@/tests/lib/copies/copyTools';
import { cases } from '@/tests/tools/cases';

/** Refills and takings back of what came before them: by hand, by an undone arrival, by a replacing. */
const happened = fc
  .array(
    fc.record({
      takes: fc.option(fc.nat({ max: 20 })),
      cause: fc.constantFrom(undefined, 'arrivalUndone', 'replaced'),
    }),
    { maxLength: 12 },
  )
  .map((drawn) =>
    drawn.map(({ takes, cause }, at): Entry => {
      if (takes === null || at === 0) return anEntry(at + 1);
      const entryId = anEntry(1 + (takes % at)).id;
      return {
        ...anEntry(at + 1),
        kind: 'takeBack',
        body: { entryId, ...(cause === undefined ? {} : { cause }) },
      };
    }),
  );
const idsOf = (entries: readonly Entry[]) => entries.map(({ id }) => id);

it('what travels counts where it comes exactly as it counts here', () => {
  fc.assert(
    fc.property(happened, (entries) => {
      const travelling = travellingEntries(entries);
      expect(idsOf(entriesInForce(travelling))).toEqual(idsOf(entriesInForce(entries)));
      expect(travelling.filter(takesBackHereOnly)).toEqual([]);
      expect(travellingEntries(travelling)).toEqual(travelling);
    }),
    cases(300),
  );
});

it('without a taking back of this device alone everything travels', () => {
  fc.assert(
    fc.property(happened, (entries) => {
      const byHand = entries.filter((entry) => !takesBackHereOnly(entry));
      expect(travellingEntries(byHand)).toEqual(byHand);
    }),
    cases(100),
  );
});
