// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { approvedVersions } from '@/lib/artwork/approvedVersions';
import { benchStore, clearBench, kept } from '@/tests/app/_docket/bench';
import { layOut } from '@/tests/app/_docket/layOut';

vi.mock('@/app/_store/appDocuments', async () => {
  const { benchStore: appDocuments } = await import('@/tests/app/_docket/bench');
  return { appDocuments };
});
vi.mock('@/app/_pricing/priceService', async () => {
  const { benchPrices: prices } = await import('@/tests/app/_docket/bench');
  return { startPriceService: prices.start };
});

afterEach(() => {
  cleanup();
  clearBench();
});

const checks = () => within(screen.getByRole('region', { name: 'Checks' }));

function withoutPermission(): void {
  act(() => {
    benchStore().actions.edit('Rights', [
      {
        do: 'change',
        kind: 'artwork',
        id: 'club-crest',
        to: (body) => ({ ...body, rights: { ...body.rights, state: 'none' } }),
      },
    ]);
  });
}

describe('findings', () => {
  it('stand as sentences, cautions in sight and notes folded into one line that names them', async () => {
    await layOut();
    const rows = () => checks().getAllByRole('listitem');
    expect(rows().map(({ textContent }) => textContent?.slice(0, 8))).toEqual(['Caution:', 'Caution:']);
    const notes = checks().getByRole('button', {
      name: /^\d notes: seam, sharpness, shape, proof, free places, losses of several presses/,
    });
    expect(notes).toHaveAttribute('aria-expanded', 'false');
    fireEvent.click(notes);
    expect(rows().length).toBeGreaterThan(7);
    expect(rows().at(-1)?.textContent).toMatch(/^Note:/);
  });

  it('are told in one sentence, and say why when asked', async () => {
    await layOut();
    expect(checks().queryByText(/A promise is no permission|in writing/)).toBeNull();
    fireEvent.click(checks().getByRole('button', { name: /^Why: Permission for Club crest/ }));
    const row = checks().getAllByRole('listitem')[0];
    expect(row?.textContent?.length).toBeGreaterThan(120);
  });

  it('lead to the field they speak of, through whatever folds it away', async () => {
    await layOut();
    fireEvent.click(
      checks().getByRole('button', { name: /^Show it: Permission for Club crest is promised/ }),
    );
    const field = document.getElementById('job-lines-0-placements-1-artwork-rights-state');
    expect(field).toHaveFocus();
    expect(field?.closest('details')).toHaveAttribute('open');
    expect(document.getElementById('job-lines-0-placements-1')).toHaveAttribute('aria-expanded', 'true');
  });

  it('are mended by their button, as one step that undo names like it', async () => {
    await layOut();
    fireEvent.click(checks().getByRole('button', { name: /notes: / }));
    fireEvent.click(checks().getByText('The customer has approved it'));
    expect(approvedVersions(benchStore().getState().entries.approval)).toMatchObject({ 'hill-path': 1 });
    expect(kept.undoLabel()).toBe('The customer has approved it');
    await waitFor(() => expect(checks().queryByText('The customer has approved it')).toBeNull());
    expect(document.activeElement).toHaveTextContent('Nothing stops it. 2 things to settle');
  });

  it('are told of an approval that is noted and taken away beside the version', async () => {
    await layOut();
    const approvals = () => approvedVersions(benchStore().getState().entries.approval);
    const proof = () => checks().queryByText(/The customer has approved/);
    fireEvent.click(checks().getByRole('button', { name: /notes: / }));
    expect(proof()).toHaveTextContent('The customer has approved it');
    fireEvent.click(checks().getByRole('button', { name: /^Why: The customer has not approved/ }));
    fireEvent.click(checks().getByRole('button', { name: /^Show it: The customer has not approved/ }));
    expect(document.getElementById('job-lines-0-placements-0-artwork-version')).toHaveFocus();
    expect(await screen.findByText('The customer has not approved it yet.')).toBeVisible();
    fireEvent.click(screen.getByRole('button', { name: 'Version 1 is approved' }));
    expect(approvals()).toMatchObject({ 'hill-path': 1 });
    expect(kept.undoLabel()).toBe('Approval of Hill path picture, version 1');
    expect(screen.getByText('The customer has approved version 1.')).toBeVisible();
    await waitFor(() => expect(proof()).toBeNull());
    fireEvent.click(screen.getByRole('button', { name: 'Take the approval away' }));
    expect(approvals()).not.toHaveProperty('hill-path');
    await waitFor(() => expect(proof()).toHaveTextContent('The customer has approved it'));
  });

  it('of the workshop and of blanks lead to where those are kept', async () => {
    await layOut();
    act(() => {
      benchStore().actions.edit('Pay', [
        {
          do: 'change',
          kind: 'workshop',
          id: 'workshop',
          to: (body) => ({ ...body, rates: { ...body.rates, wage: null } }),
        },
      ]);
    });
    await waitFor(() => expect(checks().getAllByText('Stop:').length).toBeGreaterThan(0));
    const link = checks().getAllByRole('link')[0];
    expect(link).toHaveAttribute('href', '/workshop#workshop-rates-wage');
  });
});

describe('a stop that may be passed', () => {
  it('asks for a reason of three letters, keeps it, and gives the price again', async () => {
    await layOut();
    withoutPermission();
    fireEvent.click(await checks().findByText('Go on in spite of it'));
    const reason = checks().getByLabelText('Why you go on');
    expect(reason).toHaveFocus();
    expect(checks().getByText('Your reason is printed on the run sheet.')).toBeVisible();
    fireEvent.change(reason, { target: { value: 'ok' } });
    const go = checks().getByRole('button', { name: 'Go on' });
    expect(go).toHaveAttribute('aria-disabled', 'true');
    fireEvent.click(go);
    expect(kept.job().waivers).toEqual([]);
    fireEvent.change(reason, { target: { value: 'The club drew it itself.' } });
    fireEvent.click(go);
    expect(kept.job().waivers).toEqual([
      { finding: 'ART-14', lineId: 'shirts', placementId: 'badge', reason: 'The club drew it itself.' },
    ]);
    expect(await checks().findByText(/Passed by you: “The club drew it itself\.”/)).toBeVisible();
    expect(screen.getByText(/^Checked: 1 stop passed with a reason, 1 caution/)).toBeVisible();
  });

  it('stops again when the reason is taken back', async () => {
    await layOut();
    withoutPermission();
    fireEvent.click(await checks().findByText('Go on in spite of it'));
    fireEvent.change(checks().getByLabelText('Why you go on'), { target: { value: 'Because' } });
    fireEvent.click(checks().getByRole('button', { name: 'Go on' }));
    fireEvent.click(await checks().findByText('Take it back'));
    expect(kept.job().waivers).toEqual([]);
    expect(await checks().findByText('Go on in spite of it')).toBeVisible();
  });
});

describe('what a job names and what was removed', () => {
  const remove = (kind: 'blank' | 'artwork', id: string) =>
    act(() => {
      benchStore().actions.edit('Remove', [{ do: 'delete', kind, id }]);
    });

  it.each([
    ['blank', 'white-shirt', /names the blank “(.+)”, which was removed or cannot be read\./],
    ['artwork', 'club-crest', /“.+” of the line “.+” names the artwork “(.+)”, which was removed/],
  ] as const)('goes by its name, a %s too, and comes back by a button', async (kind, id, words) => {
    await layOut();
    const { name } = kind === 'blank' ? kept.blank(id) : kept.artwork(id);
    remove(kind, id);
    const sentence = await checks().findByText(words);
    expect(sentence).toHaveTextContent(`“${name}”`);
    expect(sentence).not.toHaveTextContent(id);
    fireEvent.click(checks().getByRole('button', { name: `Bring “${name}” back` }));
    await waitFor(() => expect(checks().queryByText(words)).toBeNull());
    expect(kept.undoLabel()).toBe(`Bring “${name}” back`);
    await act(() => benchStore().actions.undo());
    expect(await checks().findByText(words)).toBeVisible();
  });

  it('is looked for in the history where it was a part of the workshop', async () => {
    await layOut();
    const [press] = kept.workshop().presses;
    act(() => {
      benchStore().actions.edit('Remove', [
        { do: 'change', kind: 'workshop', id: 'workshop', to: (body) => ({ ...body, presses: [] }) },
      ]);
    });
    const back = await checks().findAllByRole('button', { name: `Bring “${press?.name}” back` });
    fireEvent.click(back[0] ?? document.body);
    await waitFor(() =>
      expect(checks().queryByRole('button', { name: `Bring “${press?.name}” back` })).toBeNull(),
    );
    expect(kept.workshop().presses).toEqual([press]);
  });
});

describe('what nobody has told about the workshop', () => {
  type Kept = ReturnType<typeof kept.workshop>;
  const forget = (habits: Partial<Kept['habits']>, room: Partial<Kept['room']> = {}) =>
    act(() => {
      benchStore().actions.edit('Forget', [
        {
          do: 'change',
          kind: 'workshop',
          id: 'workshop',
          to: (body) => ({
            ...body,
            habits: { ...body.habits, ...habits },
            room: { ...body.room, ...room },
          }),
        },
      ]);
    });

  it('is asked in a card with a button for each answer, and never asked again', async () => {
    await layOut();
    expect(checks().queryByRole('region', { name: /about your workshop/ })).toBeNull();
    forget({ safetySheets: null, extensionLead: null });
    const card = within(await checks().findByRole('region', { name: '2 things about your workshop' }));
    fireEvent.click(card.getByRole('button', { name: /^Yes: Is the press plugged straight/ }));
    expect(kept.workshop().habits.extensionLead).toBe(false);
    expect(kept.undoLabel()).toBe('Is the press plugged straight into the wall? Yes');
    const last = await checks().findByRole('heading', { name: 'One thing about your workshop' });
    expect(last).toHaveFocus();
    fireEvent.click(checks().getByRole('button', { name: /^Yes: Do you keep the safety data sheets/ }));
    await waitFor(() => expect(checks().queryByRole('region', { name: /about your workshop/ })).toBeNull());
    expect(document.activeElement).toHaveTextContent('Nothing stops it.');
  });

  it('asks four things at first and says how many follow; heading, answer and buttons count the same', async () => {
    await layOut();
    forget({ safetySheets: null, extensionLead: null, sewnLabel: null, humidity: null, humidityFits: null });
    forget({}, { ventilated: null, foodOvenUsed: false });
    const card = within(await checks().findByRole('region', { name: '5 things about your workshop' }));
    expect(card.getAllByRole('listitem')).toHaveLength(4);
    expect(checks().getByText(/things to settle, 5 questions/)).toBeVisible();
    fireEvent.click(card.getByRole('button', { name: 'Ask the last one' }));
    expect(card.getAllByRole('listitem')).toHaveLength(5);
    expect(card.queryByRole('button', { name: 'Ask the last one' })).toBeNull();
  });
});

describe('stops that say the same', () => {
  it('are passed together with one reason', async () => {
    await layOut();
    act(() => {
      benchStore().actions.edit('Twice', [
        {
          do: 'change',
          kind: 'job',
          id: 'club-order',
          to: (body) => ({
            ...body,
            lines: ['Ann', 'Ben'].flatMap((name) =>
              body.lines.map((line) => ({
                ...line,
                id: name,
                name,
                placements: line.placements.map((placement) => ({
                  ...placement,
                  id: `${placement.id}-${name}`,
                })),
              })),
            ),
          }),
        },
      ]);
    });
    act(() => {
      benchStore().actions.edit('Pixels', [
        {
          do: 'change',
          kind: 'artwork',
          id: 'hill-path',
          to: (body) => ({ ...body, pixels: { width: 150, height: 180 } }),
        },
      ]);
    });
    fireEvent.click(await checks().findByText('Go on in spite of it'));
    expect(checks().getByText('Ann and Ben.')).toBeVisible();
    fireEvent.change(checks().getByLabelText('Why you go on'), { target: { value: 'Drawn by them.' } });
    fireEvent.click(checks().getByRole('button', { name: 'Go on' }));
    expect(await checks().findByText(/Passed by you: “Drawn by them\.”/)).toBeVisible();
    expect(kept.job().waivers.map(({ lineId }) => lineId)).toEqual(['Ann', 'Ben']);
    fireEvent.click(checks().getByText('Take it back'));
    expect(kept.job().waivers).toEqual([]);
  });
});

describe('what nobody has told of the order', () => {
  it('is asked and no caution: whether freight comes on top, and whether it is brought', async () => {
    await layOut();
    act(() => {
      benchStore().actions.edit('Forget', [
        {
          do: 'change',
          kind: 'job',
          id: 'club-order',
          to: (body) => ({ ...body, freightIn: null, deliveryKm: null }),
        },
      ]);
    });
    const card = within(await checks().findByRole('region', { name: '2 things about this job' }));
    expect(checks().queryByText(/Nobody has said/)).toBeNull();
    expect(checks().getByText(/2 things to settle, 2 questions/)).toBeVisible();
    fireEvent.click(card.getByRole('button', { name: /^Yes, type the way: / }));
    expect(document.getElementById('job-deliveryKm')).toHaveFocus();
    expect(kept.job().deliveryKm).toBeNull();
    fireEvent.click(card.getByRole('button', { name: /^No: Does freight come on top/ }));
    expect(kept.job().freightIn?.value).toBe(0);
    expect(await checks().findByRole('heading', { name: 'One thing about this job' })).toHaveFocus();
  });
});
