import { describe, expect, it } from 'vitest';
import { raiseSequences } from '@/lib/exports/raiseSequences';

const day = (id: string, on: string) => ({
  ...{ id, title: 'Wanted', details: '' },
  when: { kind: 'days', from: on, to: on } as const,
});

/* RFC 5545 3.8.7.4: the sequence rises with each change that matters; what is called off is raised as well. */
describe('entries of a calendar that are handed out again', () => {
  const first = raiseSequences([day('wanted', '2026-12-14'), day('print', '2026-12-04')], [], 0);

  it('begin with the number they are given, none of them called off', () => {
    expect(first.map(({ id, sequence, isCancelled }) => [id, sequence, isCancelled])).toEqual([
      ['wanted', 0, false],
      ['print', 0, false],
    ]);
  });

  it('keep their number where nothing changed, and rise by one where something did', () => {
    const then = raiseSequences([day('wanted', '2026-12-15'), day('print', '2026-12-04')], first, 9);
    expect(then.map(({ id, sequence }) => [id, sequence])).toEqual([
      ['wanted', 1],
      ['print', 0],
    ]);
  });

  it('call off what is no more, once, and bring it back under a higher number', () => {
    const without = raiseSequences([day('wanted', '2026-12-14')], first, 9);
    expect(without[1]).toMatchObject({ id: 'print', sequence: 1, isCancelled: true });
    const again = raiseSequences([day('wanted', '2026-12-14')], without, 9);
    expect(again[1]).toEqual(without[1]);
    const back = raiseSequences([day('wanted', '2026-12-14'), day('print', '2026-12-04')], again, 9);
    expect(back[1]).toMatchObject({ id: 'print', sequence: 2, isCancelled: false });
  });
});
