import { describe, expect, it } from 'vitest';
import type { OrderStep } from '@/shared/schemas/orderEvents';
import {
  aDevice,
  bringBack,
  copyOf,
  type Device,
  openTab,
  openTabWithJob,
  rowsOf,
  type SmallStore,
  writeRow,
} from './tabs';

interface Number {
  readonly count: number;
  readonly letter: string | null;
}
const pdf = new TextEncoder().encode('%PDF-1.7 a bill');
const bill = (series = 'bill 26', content = pdf) =>
  ({
    kind: 'bill',
    about: { kind: 'job', id: 'job-1' },
    series,
    body: (number: Number) => ({ number, text: 'A bill' }),
    file: () => ({ name: 'bill.pdf', content }),
  }) as const;
const countOf = async (store: SmallStore, series?: string) => {
  const outcome = await store.actions.issue('Bill', bill(series));
  return outcome.state === 'issued' ? outcome.paper.number.count : null;
};
const step = (what: OrderStep, orderId = 'order-1') =>
  ({ kind: 'orderEvent', body: { orderId, day: '2026-11-27', step: what } }) as const;
/** The number a screen may guess meanwhile. */
const enquired = (orderId: string, year = 2026) =>
  step({ what: 'enquired', number: { year, count: 1, letter: 'A' } }, orderId);
const enquire = async (store: SmallStore, orderId: string, year?: number) => {
  store.actions.note('Enquiry', [enquired(orderId, year)]);
  await store.flush();
};
const numbersIn = (store: SmallStore) =>
  store
    .getState()
    .entries.orderEvent.flatMap(({ body }) =>
      body.step.what === 'enquired' ? [[body.orderId, body.step.number.count]] : [],
    );
const letterOf = (store: SmallStore) => store.getState().device?.letter;
const keptNumbers = async (device: Device) =>
  (await rowsOf(device.factory, 'entries'))
    .flatMap((row) => (row as { body: { step?: { number?: Number } } }).body.step?.number?.count ?? [])
    .toSorted((one, other) => one - other);

describe('papers that each device numbers for itself', () => {
  it('go on from this device’s own last, whatever another device has given in the same series', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    expect(await countOf(store)).toBe(1);
    const [row] = (await rowsOf(device.factory, 'papers')) as readonly object[];
    await writeRow(device.factory, 'papers', {
      ...row,
      ...{ id: 'other000-7', device: 'other000', number: { count: 41, letter: 'B' } },
    });
    expect(await countOf(store)).toBe(2);
  });

  it('begin again at 1 with the series of another year, and go on where they were in that of the last', async () => {
    const store = await openTabWithJob(aDevice());
    expect([await countOf(store, 'bill 26'), await countOf(store, 'bill 26')]).toEqual([1, 2]);
    expect(await countOf(store, 'bill 27')).toBe(1);
    // A clock that was set back a year.
    expect(await countOf(store, 'bill 26')).toBe(3);
  });

  it('keep the number of one that was withdrawn, also when an older copy takes the place of everything', async () => {
    const store = await openTabWithJob(aDevice());
    await countOf(store);
    const copy = await copyOf(store);
    expect(await countOf(store)).toBe(2);
    await store.actions.undo();
    expect(await countOf(store)).toBe(3);
    expect(await bringBack(store, copy)).toMatchObject({ state: 'replaced' });
    expect(store.getState().papers.bill.map(({ number, withdrawn }) => [number.count, withdrawn])).toEqual([
      [1, false],
      [2, true],
      [3, true],
    ]);
    expect(await countOf(store)).toBe(4);
  });

  it('keep the number of one whose record was damaged or is gone', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    await countOf(store);
    const [row] = (await rowsOf(device.factory, 'papers')) as readonly { readonly id: string }[];
    await writeRow(device.factory, 'papers', { id: row?.id, kind: 'bill' });
    expect(await countOf(store)).toBe(2);
  });

  it('begin at 1 under a new letter once two devices with one letter have met', async () => {
    const [one, other] = [aDevice(), aDevice()];
    const [here, there] = [await openTabWithJob(one), await openTabWithJob(other)];
    await countOf(here);
    await countOf(there);
    const letter = letterOf(here) ?? '';
    const drawnFirst = letterOf(there);
    // Both drew the same letter, which one in 23 pairs of devices does.
    const rows = (await rowsOf(other.factory, 'meta')) as readonly { readonly key: string }[];
    const device = rows.find(({ key }) => key === 'device');
    await writeRow(other.factory, 'meta', { ...device, key: 'device', letter });
    there.close();
    const again = await openTab(other, 'again');
    expect(letterOf(again)).toBe(letter);
    const look = await again.actions.lookAtCopy(await copyOf(here));
    if (look.state !== 'copy') throw new Error('no copy');
    await again.actions.takeCopy('In', look, { mode: 'beside' });
    expect(letterOf(again)).not.toBe(letter);
    const outcome = await again.actions.issue('Bill', bill());
    // Where the draw gives back the letter it had before, its series goes on there without a gap.
    const count = letterOf(again) === drawnFirst ? 2 : 1;
    expect(outcome).toMatchObject({ paper: { number: { count, letter: letterOf(again) } } });
    // The device that was met goes on under its own.
    expect(await countOf(here)).toBe(2);
  });

  it('of a copied profile begin at 1 under another id and letter once the two have met', async () => {
    const [one, other] = [aDevice(), aDevice()];
    const here = await openTabWithJob(one);
    await countOf(here);
    const there = await openTabWithJob(other);
    for (const table of ['entries', 'papers', 'files', 'meta'] as const) {
      for (const row of await rowsOf(one.factory, table)) await writeRow(other.factory, table, row as object);
    }
    there.close();
    const twin = await openTab(other, 'twin');
    other.clock.now += 1;
    // Neither can know of the other yet: both give the second number of one series.
    expect([await countOf(here), await countOf(twin)]).toEqual([2, 2]);
    const letter = letterOf(twin);
    const look = await twin.actions.lookAtCopy(await copyOf(here));
    if (look.state !== 'copy') throw new Error('no copy');
    await twin.actions.takeCopy('In', look, { mode: 'beside' });
    expect(letterOf(twin)).not.toBe(letter);
    expect(await twin.actions.issue('Bill', bill())).toMatchObject({
      paper: { number: { count: 1, letter: letterOf(twin) } },
    });
    expect(await countOf(here)).toBe(3);
  });

  it('in two tabs at the same moment get two numbers, and one that is broken off leaves no gap', async () => {
    const device = aDevice();
    const [here, there] = [await openTabWithJob(device, 'here'), await openTab(device, 'there')];
    const counts = await Promise.all([countOf(here), countOf(there)]);
    expect(counts.toSorted()).toEqual([1, 2]);
    await expect(here.actions.issue('Bill', bill('bill 26', new Uint8Array()))).rejects.toThrow('as a file');
    await expect(
      here.actions.issue('Bill', { ...bill(), body: (number: Number) => ({ number, text: '' }) }),
    ).rejects.toThrow('text');
    expect(await countOf(here)).toBe(3);
  });
});

describe('the number of an enquiry', () => {
  it('is the next of this device in its year, whatever the entry said while it waited', async () => {
    const store = await openTabWithJob(aDevice());
    await enquire(store, 'order-1');
    await enquire(store, 'order-2');
    await enquire(store, 'order-3', 2027);
    expect(numbersIn(store)).toEqual([
      ['order-1', 1],
      ['order-2', 2],
      ['order-3', 1],
    ]);
    const [entry] = store.getState().entries.orderEvent;
    expect(entry?.body.step).toMatchObject({ number: { year: 2026, letter: letterOf(store) } });
  });

  it('noted in two tabs at the same moment is never the same', async () => {
    const device = aDevice();
    const [here, there] = [await openTabWithJob(device, 'here'), await openTab(device, 'there')];
    await Promise.all([enquire(here, 'order-1'), enquire(there, 'order-2'), enquire(here, 'order-3')]);
    expect(await keptNumbers(device)).toEqual([1, 2, 3]);
    await expect.poll(() => numbersIn(there).length).toBe(3);
  });

  it('stays given when the enquiry is taken back', async () => {
    const store = await openTabWithJob(aDevice());
    await enquire(store, 'order-1');
    await store.actions.undo();
    expect(numbersIn(store)).toEqual([]);
    // The timeline still has it, beside what took it back.
    expect(store.actions.allEntries().map(({ kind }) => kind)).toEqual(['orderEvent', 'takeBack']);
    await enquire(store, 'order-2');
    expect(numbersIn(store)).toEqual([['order-2', 2]]);
    await store.actions.undo();
    await store.actions.redo();
    expect(numbersIn(store)).toEqual([['order-2', 2]]);
  });

  it('bears a letter that no entry of another device bears, where this device draws its first', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    for (const letter of 'ABCDEFGHJKLMNPRSTUVWXY') {
      const other = `other${letter.toLowerCase()}00`;
      const { kind, body } = step({ what: 'enquired', number: { year: 2026, count: 1, letter } }, other);
      const row = { id: `${other}-1`, kind, version: 1, device: other, count: 1, at: 1000, body };
      await writeRow(device.factory, 'entries', row);
    }
    await enquire(store, 'order-1');
    expect(letterOf(store)).toBe('Z');
  });

  it('makes another device that only met entries number under another letter', async () => {
    const [one, other] = [aDevice(), aDevice()];
    const [here, there] = [await openTabWithJob(one), await openTabWithJob(other)];
    await enquire(here, 'order-1');
    await enquire(there, 'order-2');
    const letter = letterOf(here) ?? '';
    const rows = (await rowsOf(other.factory, 'meta')) as readonly { readonly key: string }[];
    await writeRow(other.factory, 'meta', { ...rows.find(({ key }) => key === 'device'), letter });
    there.close();
    const again = await openTab(other, 'again');
    const look = await again.actions.lookAtCopy(await copyOf(here));
    if (look.state !== 'copy') throw new Error('no copy');
    await again.actions.takeCopy('In', look, { mode: 'beside' });
    expect(letterOf(again)).not.toBe(letter);
  });
});

describe('a paper whose file takes time', () => {
  const toMake = (make: (number: Number) => Promise<Uint8Array<ArrayBuffer>>) =>
    ({
      kind: 'bill',
      about: { kind: 'job', id: 'job-1' },
      series: 'bill 26',
      body: (number: Number) => ({ number, text: 'A bill' }),
      file: async (number: Number) => ({ name: 'bill.pdf', content: await make(number) }),
    }) as const;
  const bytesOf = ({ count }: Number) => new TextEncoder().encode(`%PDF bill ${count}`);

  it('is issued under the number it was made for', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const outcome = await store.actions.issueMade(
      'Bill',
      toMake(async (number) => bytesOf(number)),
    );
    expect(outcome).toMatchObject({
      state: 'issued',
      paper: { number: { count: 1 }, body: { number: { count: 1 } } },
    });
    const fileId = outcome.state === 'issued' ? outcome.paper.file?.sha256 : undefined;
    const kept = await store.actions.readFile(fileId ?? '');
    expect(kept?.content instanceof Blob ? await kept.content.text() : null).toBe('%PDF bill 1');
  });

  it('is made again, and says so, where another tab is given its number meanwhile', async () => {
    const device = aDevice();
    const [here, there] = [await openTabWithJob(device, 'here'), await openTab(device, 'there')];
    const made: number[] = [];
    let overtaken = 0;
    const outcome = await here.actions.issueMade(
      'Bill',
      toMake(async (number) => {
        made.push(number.count);
        if (made.length === 1) await there.actions.issue('Bill', bill());
        return bytesOf(number);
      }),
      () => {
        overtaken += 1;
      },
    );
    expect(made).toEqual([1, 2]);
    expect(overtaken).toBe(1);
    expect(outcome).toMatchObject({ paper: { number: { count: 2 }, body: { number: { count: 2 } } } });
  });

  it('made in two tabs at once comes out under two numbers, each in its own file', async () => {
    const device = aDevice();
    const [here, there] = [await openTabWithJob(device, 'here'), await openTab(device, 'there')];
    // Neither goes on before both have begun.
    let begun = 0;
    let go = () => {};
    const both = new Promise<void>((resolve) => {
      go = resolve;
    });
    const make = async (number: Number) => {
      begun += 1;
      if (begun === 2) go();
      await both;
      return bytesOf(number);
    };
    await Promise.all([here, there].map((tab) => tab.actions.issueMade('Bill', toMake(make))));
    const files = (await rowsOf(device.factory, 'papers')) as readonly {
      readonly number: Number;
      readonly body: { readonly number: Number };
    }[];
    expect(files.map(({ number }) => number.count).toSorted()).toEqual([1, 2]);
    for (const { number, body } of files) expect(body.number).toEqual(number);
  });

  it('overtaken every time is told, and nothing of it is kept', async () => {
    const device = aDevice();
    const [here, there] = [await openTabWithJob(device, 'here'), await openTab(device, 'there')];
    let made = 0;
    const outcome = await here.actions.issueMade(
      'Bill',
      toMake(async (number) => {
        made += 1;
        await there.actions.issue('Bill', bill());
        return bytesOf(number);
      }),
    );
    expect(outcome).toEqual({ state: 'overtaken' });
    expect(made).toBe(5);
    expect(await rowsOf(device.factory, 'papers')).toHaveLength(5);
    expect(here.getState().kept).toMatchObject({ state: 'kept' });
    expect(await countOf(here)).toBe(6);
  });

  it('that cannot be made throws what went wrong, and the number goes to the next', async () => {
    const device = aDevice();
    const store = await openTabWithJob(device);
    const broken = toMake(() => Promise.reject(new Error('no type for this letter')));
    await expect(store.actions.issueMade('Bill', broken)).rejects.toThrow('no type');
    expect(await rowsOf(device.factory, 'papers')).toEqual([]);
    expect(await countOf(store)).toBe(1);
  });

  it('pressed twice is made once', async () => {
    const store = await openTabWithJob(aDevice());
    let made = 0;
    const make = toMake(async (number) => {
      made += 1;
      return bytesOf(number);
    });
    const [one, two] = await Promise.all([
      store.actions.issueMade('Bill', make),
      store.actions.issueMade('Bill', make),
    ]);
    expect(two).toEqual(one);
    expect(made).toBe(1);
  });
});
