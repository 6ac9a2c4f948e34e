// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Arrived } from '@/app/_copies/Arrived';
import { BringIn } from '@/app/_copies/BringIn';
import { type ArrivalStore, useArriving } from '@/app/_copies/useArriving';
import type { CopyLook } from '@/app/_store/copies/copyActions';
import type { ArrivalPlan } from '@/lib/copies/arrival';
import { aDraft, aMeeting, aPlan } from './aPlan';

const lookAtCopy = vi.fn<ArrivalStore['lookAtCopy']>();
const takeCopy = vi.fn<ArrivalStore['takeCopy']>();
const saveFirst = vi.fn<ArrivalStore['saveFirst']>();
const undo = vi.fn<() => Promise<unknown>>();

beforeEach(() => {
  lookAtCopy.mockReset();
  takeCopy.mockReset().mockResolvedValue({ state: 'replaced' });
  saveFirst.mockReset().mockResolvedValue('whole');
  undo.mockReset().mockResolvedValue(undefined);
});
afterEach(cleanup);

function Room({ undoLabel }: Readonly<{ undoLabel: string | null }>) {
  const arriving = useArriving({ lookAtCopy, takeCopy, saveFirst, undo, undoLabel });
  return (
    <>
      <BringIn arriving={arriving} button="Bring a file in" />
      <Arrived arriving={arriving} level={2} />
    </>
  );
}

const file = (name = 'copy.zip') => new File(['x'], name, { type: 'application/zip' });
const choose = (one = file()) => userEvent.upload(screen.getByLabelText('Copy or carried file'), one);
const enter = (found: CopyLook, undoLabel: string | null = null) => {
  lookAtCopy.mockResolvedValue(found);
  return render(<Room undoLabel={undoLabel} />);
};
const found = (plan: ArrivalPlan): CopyLook => ({ state: 'copy', file: file(), plan });
const button = (name: string) => screen.getByRole('button', { name });

const studied = aPlan({
  meetings: [
    aMeeting('comesBack', 'Slate trial'),
    aMeeting('comesBack', 'Gift mug for Sam'),
    aMeeting('newerHere', 'Ramblers Club shirts'),
    aMeeting('newerHere', 'Kayak Club bags'),
    aMeeting('newerHere', 'Harbour Choir mugs'),
    aMeeting('same', 'Star Map'),
  ],
  onlyHere: [
    aDraft('aprons', 'Fernhill Bakery aprons'),
    aDraft('two', 'Two'),
    aDraft('three', 'Three'),
    aDraft('four', 'Four'),
    aDraft('five', 'Five'),
  ],
  papers: 58,
});

describe('a copy that is looked at', () => {
  it('says first what would come back and that nothing would go, then what becomes of each', async () => {
    enter(found(studied));
    await choose();
    const heading = await screen.findByRole('heading', {
      name: 'Two jobs would come back, nothing here would go',
    });
    await waitFor(() => expect(heading).toHaveFocus());
    const rows = within(screen.getByRole('region', { name: /Two jobs/ })).getAllByRole('listitem');
    expect(rows.map((row) => row.textContent)).toEqual([
      '2come backSlate trial, Gift mug for Sam: removed here on Nov 19, 2026',
      '3are newer here and stayRamblers Club shirts, Kayak Club bags, Harbour Choir mugs',
      '5are only here and stayFernhill Bakery aprons, Two, Three and two more',
      '1is the sameStar Map and all 58 papers',
    ]);
    expect(screen.getByText('Here, today').parentElement).toHaveTextContent(/9 jobs/);
    expect(screen.getByText('In the copy').parentElement).toHaveTextContent(
      /6 jobs.*Nov 14, 2026.*the laptop/,
    );
  });

  it('says of a device with nothing on it that no jobs are here, and makes up no rates', async () => {
    enter(found(aPlan({ meetings: [aMeeting('new', 'Star Map')] })));
    await choose();
    const here = (await screen.findByText('Here, today')).parentElement;
    expect(here?.textContent).toBe('Here, today0 jobs');
  });

  it('is taken as one step that is told and can be taken back', async () => {
    const { rerender } = enter(found(studied));
    await choose();
    await userEvent.click(await screen.findByRole('button', { name: 'Bring the two back' }));
    expect(await screen.findByText('Two jobs are back.')).toBeVisible();
    const label = takeCopy.mock.lastCall?.[0] ?? '';
    expect(takeCopy).toHaveBeenCalledWith(label, found(studied), { mode: 'beside', choices: {} });
    expect(saveFirst).not.toHaveBeenCalled();
    expect(screen.queryByRole('button', { name: 'Undo' })).toBeNull();
    rerender(<Room undoLabel={label} />);
    await userEvent.click(button('Undo'));
    expect(undo).toHaveBeenCalledTimes(1);
    expect(screen.queryByText('Two jobs are back.')).toBeNull();
  });

  it('is left without anything being written', async () => {
    enter(found(studied));
    await choose();
    await userEvent.click(await screen.findByRole('button', { name: 'Leave everything as it is' }));
    expect(screen.queryByRole('region')).toBeNull();
    await waitFor(() => expect(button('Bring a file in')).toHaveFocus());
    expect(takeCopy).not.toHaveBeenCalled();
  });

  it('unfolds what differs in each, and takes what is chosen', async () => {
    const clash = aMeeting('clash', 'Club shirts', {
      mine: aDraft('club-shirts', 'Club shirts', { body: { customer: 'Alex', wantedOn: '2026-12-01' } }),
      theirs: aDraft('club-shirts', 'Club shirts', { body: { customer: 'Sam', wantedOn: '2026-12-08' } }),
    });
    enter(found(aPlan({ meetings: [clash, aMeeting('same', 'Star Map')] })));
    await choose();
    await screen.findByRole('heading', { name: /One job would come in beside yours/ });
    const unfold = button('Show each difference');
    expect(unfold).toHaveAttribute('aria-expanded', 'false');
    await userEvent.click(unfold);
    const draft = screen.getByRole('group', { name: 'Club shirts' });
    expect(
      within(draft)
        .getAllByRole('listitem')
        .map((place) => place.textContent),
    ).toEqual([
      'customerhere “Alex”, in the copy “Sam”',
      'day it is wantedhere Dec 1, 2026, in the copy Dec 8, 2026',
    ]);
    expect(within(draft).getByRole('radio', { name: 'Keep both' })).toBeChecked();
    await userEvent.click(within(draft).getByRole('radio', { name: 'Take the copy’s' }));
    expect(
      screen.getByRole('heading', { name: /One job would make way here, all else here stays/ }),
    ).toBeVisible();
    await userEvent.click(button('Take it over'));
    expect(takeCopy.mock.lastCall?.[2]).toEqual({ mode: 'beside', choices: { 'club-shirts': 'theirs' } });
  });

  it('says that all of it is here, and asks for nothing', async () => {
    enter(found(aPlan({ meetings: [aMeeting('same', 'Star Map')] })));
    await choose();
    await screen.findByRole('heading', { name: 'All of it is here already, nothing would change' });
    expect(screen.queryByRole('button', { name: /^Bring|^Take/ })).not.toHaveTextContent(/ the | it /);
    expect(screen.queryByRole('button', { name: 'Show each difference' })).toBeNull();
  });

  it('tells stock, ink and papers that are only here and stay, though all of the copy is here already', async () => {
    const entriesOnlyHere = { issuing: 1, stockCount: 2, inkRefill: 1 };
    enter(found(aPlan({ meetings: [aMeeting('same', 'Star Map')], entriesOnlyHere })));
    await choose();
    const panel = await screen.findByRole('region', {
      name: 'All of it is here already, nothing would change',
    });
    const rows = within(panel).getAllByRole('listitem');
    expect(rows.map((row) => row.textContent)).toEqual([
      '1is the sameStar Map',
      '4are only here and stay: one paper that went out, two counts of stock and one ink refill',
    ]);
  });

  it('tells papers and entries that come in though every draft is the same', async () => {
    enter(
      found(aPlan({ meetings: [aMeeting('same', 'Star Map')], newPapers: 2, newEntries: { inkRefill: 1 } })),
    );
    await choose();
    await screen.findByRole('heading', {
      name: 'Two papers that went out and one ink refill would come in, nothing here would go',
    });
    await userEvent.click(button('Bring them in'));
    expect(await screen.findByText('Two papers that went out and one ink refill came in.')).toBeVisible();
  });

  it('tells what is here and would no longer count, and does not say that nothing goes', async () => {
    enter(found(aPlan({ meetings: [aMeeting('same', 'Star Map')], noLongerCounting: { approval: 2 } })));
    await choose();
    await screen.findByRole('heading', {
      name: 'Two approvals of pictures would no longer count here, all else here stays',
    });
    expect(
      screen.getByText(/^would no longer count here: two approvals of pictures, taken back/),
    ).toBeVisible();
    await userEvent.click(button('Bring them in'));
    expect(await screen.findByText('Two approvals of pictures no longer count here.')).toBeVisible();
  });

  it('offers files that were lost here though every draft is the same', async () => {
    enter(found(aPlan({ meetings: [aMeeting('same', 'Star Map')], filesBack: 1 })));
    await choose();
    await screen.findByRole('heading', { name: 'One lost file would be here again, nothing here would go' });
    await userEvent.click(button('Bring them in'));
    expect(await screen.findByText('One lost file is here again.')).toBeVisible();
  });

  it('tells what only a newer version can read, and never puts that in place of everything', async () => {
    const plan = aPlan({ meetings: [aMeeting('same', 'Star Map')], unread: 1 });
    const newer = { code: 'newerVersion', version: 9, known: 4 } as const;
    const record = { state: 'unreadable', id: 'job-9', kind: 'job', raw: {}, findings: [newer] } as const;
    enter(found({ ...plan, copy: { ...plan.copy, unreadable: [record] } }));
    await choose();
    await screen.findByRole('heading', {
      name: 'One record that this version cannot read would be kept unread, nothing here would go',
    });
    expect(screen.getByText(/^1 record in it was written by a newer version.*Reload the page/)).toBeVisible();
    expect(screen.queryByRole('button', { name: 'Put the copy in place of all this' })).toBeNull();
    await userEvent.click(button('Bring them in'));
    expect(await screen.findByText('One record that this version cannot read is kept unread.')).toBeVisible();
  });

  it('lets a copy with a damaged record take the place of everything: no version can read that', async () => {
    const plan = aPlan({ meetings: [aMeeting('same', 'Star Map')], unread: 1 });
    const damaged = { code: 'bodyInvalid', issues: [] } as const;
    const record = { state: 'unreadable', id: 'job-9', kind: 'job', raw: {}, findings: [damaged] } as const;
    enter(found({ ...plan, copy: { ...plan.copy, unreadable: [record] } }));
    await choose();
    expect(await screen.findByRole('button', { name: 'Put the copy in place of all this' })).toBeVisible();
    expect(screen.queryByText(/newer version/)).toBeNull();
  });

  it.each([
    ['failed', /could not be saved as a copy first, so nothing was changed yet/],
    ['lacking', /was saved, but lacks files.*Nothing was changed yet/],
  ] as const)(
    'takes the place of everything only after a whole copy, or where that is said again: %s',
    async (saved, words) => {
      saveFirst.mockResolvedValue(saved);
      enter(found(studied));
      await choose();
      await userEvent.click(await screen.findByRole('button', { name: 'Put the copy in place of all this' }));
      await userEvent.click(button('Put the copy in its place'));
      expect(await screen.findByRole('alert')).toHaveTextContent(words);
      expect(takeCopy).not.toHaveBeenCalled();
      await userEvent.click(button('Put the copy in its place all the same'));
      expect(await screen.findByText('The copy is in place of what was here.')).toBeVisible();
      expect(takeCopy.mock.lastCall?.[2]).toEqual({ mode: 'replace', choices: {} });
      expect(saveFirst).toHaveBeenCalledTimes(1);
    },
  );

  it('does not pass for whole where half of it is lost and the rest is here already', async () => {
    const lacks = { endsEarly: true, records: { found: 14, of: 28 } };
    enter(found(aPlan({ meetings: [aMeeting('same', 'Star Map')], lacks })));
    await choose();
    await screen.findByRole('heading', {
      name: 'Half of it could be read: 14 of 28 records. What was read of it is here already, nothing would change',
    });
    expect(screen.queryByRole('button', { name: /in place of all/ })).toBeNull();
    // Nothing of it would come in, and there is no button to bring it in by.
    expect(screen.queryByText(/can be brought in beside/)).toBeNull();
  });

  it('does not say that a cut copy never held what was not read of it', async () => {
    const lacks = { endsEarly: true, records: { found: 3, of: 25 } };
    const onlyHere = [aDraft('two', 'Two'), aDraft('three', 'Three')];
    const meetings = [aMeeting('same', 'Star Map')];
    enter(found(aPlan({ meetings, onlyHere, lacks, papers: 1, entriesOnlyHere: { approval: 1 } })));
    await choose();
    const panel = await screen.findByRole('region', { name: /^Less than half of it could be read/ });
    expect(
      within(panel)
        .getAllByRole('listitem')
        .map((row) => row.textContent),
    ).toEqual([
      '2were not read in the copy, and stay as they are hereTwo, Three',
      '1is the sameStar Map and 1 paper',
      '1was not read in the copy, and stays as it is here: one approval of a picture',
    ]);
    expect(within(panel).getByText('Read from the copy').parentElement).toHaveTextContent(/1 job/);
  });

  it('does not say so of a job that only a newer version can read in it', async () => {
    const plan = aPlan({ meetings: [aMeeting('same', 'Star Map')], onlyHere: [aDraft('job-9', 'Nine')] });
    const newer = { code: 'newerVersion', version: 9, known: 4 } as const;
    const record = { state: 'unreadable', id: 'job-9', kind: 'job', raw: {}, findings: [newer] } as const;
    enter(found({ ...plan, copy: { ...plan.copy, unreadable: [record] } }));
    await choose();
    expect(await screen.findByText('was not read in the copy, and stays as it is here')).toBeVisible();
  });

  it('counts on its button all that comes in, papers and entries too', async () => {
    enter(
      found(
        aPlan({
          meetings: [aMeeting('new', 'Slate trial')],
          newPapers: 2,
          newEntries: { stockMove: 2, stockCount: 1 },
        }),
      ),
    );
    await choose();
    await screen.findByRole('heading', {
      name: 'One job would come in, two papers that went out and three counts and moves of stock would come in, nothing here would go',
    });
    expect(button('Bring the six in')).toBeVisible();
  });

  it('says what is lost in its place, each with its own names, and keeps the focus', async () => {
    const meetings = [
      aMeeting('newerHere', 'Rates', { kind: 'workshop' }),
      aMeeting('newerHere', 'Fern', { kind: 'artwork' }),
    ];
    enter(found(aPlan({ meetings, onlyHere: [aDraft('new', 'New job')] })));
    await choose();
    await userEvent.click(await screen.findByRole('button', { name: 'Put the copy in place of all this' }));
    const loss = screen.getByText(/^All this makes way for the copy/);
    expect(loss).toHaveTextContent('It loses one job: New job.');
    expect(loss).toHaveTextContent(
      'It takes two things that changed here back to what the copy has: your rates, artwork Fern.',
    );
    expect(loss.parentElement).toHaveFocus();
    await userEvent.click(button('Keep what is here'));
    expect(button('Put the copy in place of all this')).toHaveFocus();
  });

  it('names in one list every kind or none', async () => {
    const meetings = [
      aMeeting('newerHere', 'Fern', { kind: 'artwork' }),
      aMeeting('newerHere', 'Club shirts'),
      aMeeting('newerHere', 'Star', { kind: 'artwork' }),
    ];
    enter(found(aPlan({ meetings })));
    await choose();
    expect(await screen.findByText('artworks Fern, Star, job Club shirts')).toBeVisible();
  });

  it('says what a damaged one lacks, and can still be taken', async () => {
    const lacks = {
      endsEarly: true,
      records: { found: 31, of: 40 },
      files: [{ sha256: 'a', name: 'fern.png', why: 'damaged' as const }],
    };
    enter(found(aPlan({ meetings: [aMeeting('new', 'Slate trial')], lacks })));
    await choose();
    expect(await screen.findByText(/The file is cut short/)).toBeVisible();
    // 31 of 40 is 77.5 %.
    expect(
      screen.getByRole('heading', {
        name: 'More than half of it could be read: 31 of 40 records. One job would come in, nothing here would go',
      }),
    ).toBeVisible();
    expect(screen.queryByRole('button', { name: /in place of all/ })).toBeNull();
    expect(screen.getByText(/^It cannot be put in place of all this/)).toBeVisible();
    expect(screen.getByText(/^What could be read can be brought in beside/)).toBeVisible();
    expect(screen.getByText(/“fern.png” is damaged in it and left out/)).toBeVisible();
    await userEvent.click(button('Bring it in'));
    expect(await screen.findByText('One job came in.')).toBeVisible();
  });

  it('stays where the device could not keep it, with the reason', async () => {
    takeCopy.mockResolvedValue({ state: 'notKept', why: 'diskFull' });
    enter(found(studied));
    await choose();
    await userEvent.click(await screen.findByRole('button', { name: 'Bring the two back' }));
    expect(await screen.findByRole('alert')).toHaveTextContent(/no room left.*Nothing here was changed/);
    expect(button('Bring the two back')).toBeVisible();
  });
});

describe('one thing that was carried', () => {
  const of = { kind: 'job', id: 'ramblers-club-shirts', name: 'Ramblers Club shirts' };
  const things = [
    aMeeting('new', 'Mug', { kind: 'blank' }),
    aMeeting('same', 'Shirt', { kind: 'blank' }),
    aMeeting('new', 'Fern', { kind: 'artwork' }),
    aMeeting('new', 'Star', { kind: 'artwork' }),
    aMeeting('new', 'Leaf', { kind: 'artwork' }),
  ];

  it('says what it is and what comes with it', async () => {
    enter(found(aPlan({ of, meetings: [aMeeting('new', 'Ramblers Club shirts'), ...things] })));
    await choose();
    expect(
      await screen.findByRole('heading', {
        name: 'Ramblers Club shirts, with 2 blanks and 3 artworks, is new here',
      }),
    ).toBeVisible();
    expect(screen.queryByText('Here, today')).toBeNull();
    expect(screen.queryByRole('button', { name: /in place of all/ })).toBeNull();
  });

  it('is called a file, and tells nothing of what else is here', async () => {
    const meetings = [aMeeting('newerThere', 'Ramblers Club shirts')];
    enter(found(aPlan({ of, meetings, onlyHere: [aDraft('two', 'Two')] })));
    await choose();
    expect(await screen.findByText('is newer in the file and is taken')).toBeVisible();
    expect(screen.queryByText(/only here/)).toBeNull();
    expect(screen.queryByText(/the copy/)).toBeNull();
  });

  it.each([
    [[], { newPapers: 1 }, 'Fair prices is the same here already; one paper that went out would come in'],
    [
      [aMeeting('new', 'Mug', { kind: 'blank' })],
      { newPapers: 1 },
      'Fair prices is the same here already; one blank would come in, one paper that went out would come in',
    ],
    [
      [],
      { newEntries: { approval: 1 } },
      'Fair prices is the same here already; one approval of a picture would come in',
    ],
    [[], { filesBack: 1 }, 'Fair prices is the same here already; one lost file would be here again'],
    [[], {}, 'Fair prices is the same here already'],
  ])(
    'says of a list that is the same here what would come in with it: %j %j',
    async (others, counts, name) => {
      const list = aMeeting('same', 'Fair prices', { kind: 'priceList' });
      const carried = { kind: 'priceList', id: 'fair-prices', name: 'Fair prices' };
      enter(found(aPlan({ of: carried, ...counts, meetings: [list, ...others] })));
      await choose();
      expect(await screen.findByRole('heading', { name })).toBeVisible();
    },
  );

  it('says of a list that is newer in the file which papers come in as well', async () => {
    const meetings = [aMeeting('newerThere', 'Fair prices', { kind: 'priceList' })];
    const carried = { kind: 'priceList', id: 'fair-prices', name: 'Fair prices' };
    enter(found(aPlan({ of: carried, meetings, newPapers: 2 })));
    await choose();
    expect(
      await screen.findByRole('heading', {
        name: 'Fair prices is newer in the file and would be brought up to date; two papers that went out would come in',
      }),
    ).toBeVisible();
  });

  it('says that both are kept where both devices changed it', async () => {
    enter(found(aPlan({ of, meetings: [aMeeting('clash', 'Ramblers Club shirts')] })));
    await choose();
    expect(
      await screen.findByRole('heading', {
        name: 'Ramblers Club shirts has changed on both devices: both would be kept',
      }),
    ).toBeVisible();
  });
});

describe('a file that cannot be taken', () => {
  it.each([
    [{ code: 'notOurs', looksLike: 'otherZip' }, /is no copy made here\. It is a zip of something else/],
    [{ code: 'newerFormat', formatVersion: 9, known: 2 }, /was written by a newer version of the app/],
    [{ code: 'tooLarge', bytes: 5_000_000_000, most: 2_000_000_000 }, /is 5 GB; a copy can be 2 GB at most/],
    [{ code: 'nothingWhole' }, /so damaged that nothing in it can be read/],
    [{ code: 'notReadable', message: 'x' }, /could not be read from the device/],
  ] as const)('is told before anything is asked: %j', async (why, words) => {
    enter({ state: 'notACopy', why });
    await choose();
    const told = await screen.findByText(words);
    expect(told).toHaveTextContent(/Nothing here was changed\.$/);
    await waitFor(() => expect(told.parentElement).toHaveFocus());
    expect(screen.queryByRole('region')).toBeNull();
  });

  it('is asked for alone where several are dropped', async () => {
    enter(found(studied));
    const zone = screen.getByText('or drop it here');
    fireEvent.drop(zone, { dataTransfer: { files: [file('a.zip'), file('b.zip')], types: ['Files'] } });
    expect(await screen.findByText('Those were 2 files. Bring them in one at a time.')).toBeVisible();
    fireEvent.drop(zone, { dataTransfer: { files: [file('a.zip')], types: ['Files'] } });
    expect(await screen.findByRole('heading', { name: /Two jobs would come back/ })).toBeVisible();
  });
});
