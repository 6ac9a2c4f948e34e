// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Carry } from '@/app/_copies/Carry';
import type { CopyActions } from '@/app/_store/copies/copyActions';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { aMeeting, aPlan } from './aPlan';

const saved = vi.hoisted(() => vi.fn<(name: string, content: Blob) => void>());
/** A slow run may pass the minute that it began in. */
const NAME = `Club shirts ${TEST_DAY}-\\d{4}\\.zip`;
vi.mock('@/app/_files/saveBlob', () => ({ saveBlob: saved, fileName: (name: string) => name }));

const share = vi.fn<(data: ShareData) => Promise<void>>();
const makeCopy = vi.fn<CopyActions['makeCopy']>();
const lookAtCopy = vi.fn<CopyActions['lookAtCopy']>();

const plan = aPlan({
  of: { kind: 'job', id: 'club', name: 'Club shirts' },
  meetings: [
    aMeeting('same', 'Club shirts'),
    aMeeting('same', 'Shirt', { kind: 'blank' }),
    aMeeting('same', 'Fern', { kind: 'artwork' }),
    aMeeting('same', 'Star', { kind: 'artwork' }),
  ],
});

const holds = { kinds: { job: 1 }, papers: 0, entries: {}, files: 0 };

beforeEach(() => {
  saved.mockClear();
  share.mockReset().mockResolvedValue(undefined);
  makeCopy
    .mockReset()
    .mockResolvedValue({ file: new Blob(['x'.repeat(2_400)]), holds, leftOut: [], notNoted: null });
  lookAtCopy.mockReset().mockImplementation(async (file) => ({ state: 'copy', file, plan }));
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const enter = (canShare: boolean) => {
  vi.stubGlobal('navigator', { language: 'en', share, canShare: () => canShare });
  render(<Carry store={{ makeCopy, lookAtCopy }} what={{ kind: 'job', id: 'club', name: 'Club shirts' }} />);
};
const press = async (name: string) => userEvent.click(await screen.findByRole('button', { name }));

describe('carrying to another device', () => {
  it('saves the file at once where nothing can be shared, and says what is in it', async () => {
    enter(false);
    await press('Carry to another device');
    expect(
      await screen.findByText(
        new RegExp(`^Saved as ${NAME}\\. It holds Club shirts, with 1 blank and 2 artworks, 2\\.4 kB\\.$`),
      ),
    ).toBeVisible();
    expect(makeCopy).toHaveBeenCalledWith({ kind: 'job', id: 'club' }, null);
    expect(saved).toHaveBeenCalledTimes(1);
    expect(screen.queryByRole('button', { name: 'Send it' })).toBeNull();
  });

  it('makes the file before the tap that hands it on', async () => {
    enter(true);
    await press('Carry to another device');
    await screen.findByRole('button', { name: 'Send it' });
    expect(share).not.toHaveBeenCalled();
    expect(saved).not.toHaveBeenCalled();
    await press('Send it');
    expect(await screen.findByText(/^Handed on\. It holds Club shirts/)).toBeVisible();
    expect(share.mock.lastCall?.[0].files?.map(({ name }) => name)).toEqual([
      expect.stringMatching(new RegExp(`^${NAME}$`)),
    ]);
  });

  it('stays ready where the maker changed their mind, and saves where the browser refuses in the end', async () => {
    enter(true);
    share.mockRejectedValueOnce(new DOMException('no', 'AbortError'));
    await press('Carry to another device');
    await press('Send it');
    expect(screen.getByRole('button', { name: 'Send it' })).toBeVisible();
    expect(saved).not.toHaveBeenCalled();
    share.mockRejectedValueOnce(new DOMException('no', 'NotAllowedError'));
    await press('Send it');
    expect(await screen.findByText(new RegExp(`^Saved as ${NAME}`))).toBeVisible();
    expect(saved).toHaveBeenCalledTimes(1);
  });

  it('names the picture that could not come along', async () => {
    makeCopy.mockResolvedValue({
      file: new Blob(['x']),
      holds,
      leftOut: [{ sha256: 'a', name: 'fern.png', why: 'missing' }],
      notNoted: null,
    });
    enter(false);
    await press('Carry to another device');
    expect(await screen.findByText(/^“fern\.png” is not in it/)).toBeVisible();
  });
});
