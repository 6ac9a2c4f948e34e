import { describe, expect, it } from 'vitest';
import {
  asked,
  type Body,
  kindOf,
  made,
  numbered,
  tableOf,
  type WrittenDraft,
  type WrittenEntry,
  withEntries,
  withJob,
  withRun,
} from './writtenRun';

describe('what does not add up in a run that has begun', () => {
  const said = async (documents: unknown) => (await asked(documents)).beside;
  const changing = (kind: string, change: (body: Body, at: number) => Body) => {
    let at = -1;
    return withEntries((all) =>
      all.map((one) => {
        if (kindOf(one) !== kind) return one;
        at += 1;
        return { entry: { ...one.entry, body: change(one.entry.body, at) } };
      }),
    );
  };

  it('is nothing where all does', async () => expect(await said(made)).toEqual([]));

  it('is a clock that ran all night', async () => {
    const { variances, beside } = await asked(
      changing('hours', (body, at) => (at === 0 ? { ...body, minutes: 1439, from: 'clock' } : body)),
    );
    // 1,399 minutes more than the 40 that were noted: −15.52 − 1,399 ÷ 60 × 18 = −15.52 − 419.70.
    expect(variances.find(({ line }) => line === 'labour')?.amount).toBe(-43_522);
    // 504 + 1,399 minutes in one day.
    expect(beside).toEqual([
      expect.stringMatching(/^The clock ran for 23 h 59 min in one go\. .* if it was left running\.$/),
      expect.stringMatching(/^31 h 43 min are noted on Dec 7, 2026\. /),
    ]);
  });

  it('is scrap that nobody named a cause for', async () => {
    const nameless = changing('pressing', (body) => ({ ...body, fault: null }));
    expect(await said(nameless)).toEqual([
      expect.stringMatching(/^4 pieces were scrapped without a cause\. .* say why each was lost\.$/),
    ]);
  });

  it('is pieces of a size that was not ordered', async () => {
    const more = withEntries((all) => {
      const pressed = all.filter((one) => kindOf(one) === 'pressing').slice(0, 5);
      const stray = pressed.map(({ entry }, at) => ({
        entry: {
          ...entry,
          ...numbered(900 + at),
          body: { ...entry.body, size: '6XL', result: 'good', fault: null },
        },
      }));
      return [...all, ...stray];
    });
    expect(await said(more)).toEqual([
      '5 pressed of a size or print that this run was not begun with: kept, and counted nowhere here.',
    ]);
  });

  it('is amounts in another currency', async () => {
    const { beside, variances } = await asked(
      changing('runActual', (body) => ({ ...body, currency: 'EUR' })),
    );
    expect(beside).toEqual([
      'An amount is noted in EUR, but this run is reckoned in USD. It counts for nothing: type it again in USD.',
    ]);
    expect(variances.find(({ line }) => line === 'blanksPrice')?.amount).toBe(0);
  });

  it('is two devices that each began it', async () => {
    const [{ paper }] = made.papers;
    const again = { ...paper, ...numbered(900), number: { count: 2, letter: 'A' } };
    const issued = made.entries.filter((one: WrittenEntry) => kindOf(one) === 'issuing');
    const twice = withEntries((all) => [
      ...all,
      ...issued.map((one: WrittenEntry) => ({
        entry: { ...one.entry, ...numbered(901), body: { paperId: again.id } },
      })),
    ]);
    const papers = [...made.papers, { paper: again }];
    expect(await said({ ...twice, papers, counts: { ...twice.counts, papers: 2 } })).toEqual([
      'Two devices each began this run. The newest standard counts; what each noted counts as well.',
    ]);
  });

  it('is a run that was begun without figures to hold it against', async () => {
    const noPaper = { ...made, papers: [], counts: { ...made.counts, papers: 0 } };
    const { variances, bridge, beside } = await asked(noPaper);
    expect([variances, bridge]).toEqual([[], null]);
    expect(beside).toEqual(['It was not begun with frozen figures, so there is nothing to hold it against.']);
  });
});

describe('a run whose job is otherwise than when it began', () => {
  const CHANGED =
    'Ramblers Club shirts changed since the run began: pieces. What was frozen then stays: the run is held against it.';
  const withPieces = (change: (quantity: number) => number) =>
    withJob((job) => ({
      ...job,
      lines: job.lines.map((line) => ({
        ...line,
        quantities: line.quantities.map(({ size, quantity }) => ({ size, quantity: change(quantity) })),
      })),
    }));
  const sumOf = (variances: readonly { readonly amount: number }[] = []) =>
    variances.reduce((sum, { amount }) => sum + amount, 0);

  it('is planned anew and held against what was frozen', async () => {
    const { buy, variances, bridge, beside } = await asked(
      withPieces((quantity) => (quantity === 11 ? 12 : quantity)),
    );
    expect([buy.map(({ need }) => need), sumOf(variances), bridge]).toEqual([
      [4, 9, 12, 8, 4, 1],
      -3393,
      { from: 28_837, to: 25_444 },
    ]);
    expect(beside).toEqual([CHANGED]);
  });

  it('tells what it came to although it fits into no block any more', async () => {
    const table = await tableOf(withPieces((quantity) => quantity * 10));
    if (table.kind === 'planned') throw new Error('370 shirts fit into five hours');
    const { troubles, variances, bridge, learned } = table.answer;
    expect(troubles.map(({ kind }) => kind)).toEqual(['moreHeatings']);
    expect([sumOf(variances), bridge]).toEqual([-3393, { from: 28_837, to: 25_444 }]);
    expect(learned?.map(({ placement }) => placement)).toEqual(['back', 'badge']);
    expect(table.beside).toEqual([
      troubles[0]?.message,
      'It is not planned, but what it came to is told: held against what was frozen when it began.',
      CHANGED,
    ]);
  });

  it('tells it of a job that is gone, and of one that was taken out of the run', async () => {
    const drafts = made.drafts.filter(({ draft }: WrittenDraft) => draft.kind !== 'job');
    const gone = await tableOf({ ...made, drafts, counts: { ...made.counts, drafts: drafts.length } });
    expect(gone).toMatchObject({
      kind: 'refused',
      answer: { troubles: [{ kind: 'jobMissing' }], bridge: { from: 28_837, to: 25_444 } },
    });
    expect(gone.beside.at(-1)).toBe(
      'Ramblers Club shirts is no longer here, removed or on another device since the run began. What was frozen then stays: the run is held against it.',
    );
    const out = await tableOf(withRun({ works: [] }));
    expect(out).toMatchObject({ kind: 'refused', answer: { bridge: { from: 28_837, to: 25_444 } } });
    // It is as it was; it is only not in the run.
    expect(out.beside.slice(2)).toEqual([]);
  });
});
