// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { StorageTold } from '@/app/_copies/StorageTold';
import { useAskToKeep } from '@/app/_copies/useStoragePromise';

const persist = vi.fn<() => Promise<boolean>>();
const persisted = vi.fn<() => Promise<boolean>>();
const estimate = vi.fn<() => Promise<StorageEstimate>>();

beforeEach(() => {
  sessionStorage.clear();
  persist.mockReset().mockResolvedValue(true);
  persisted.mockReset().mockResolvedValue(false);
  estimate.mockReset().mockResolvedValue({ usage: 31_000_000, quota: 2_031_000_000 });
  vi.stubGlobal('navigator', { ...navigator, language: 'en', storage: { persist, persisted, estimate } });
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

function Asking({ hasOwnKept }: Readonly<{ hasOwnKept: boolean }>) {
  useAskToKeep(hasOwnKept);
  return <StorageTold />;
}

describe('asking the browser to keep everything', () => {
  it('waits until something of one’s own is kept, and asks once a visit', async () => {
    const { rerender } = render(<Asking hasOwnKept={false} />);
    expect(await screen.findByText(/may clear it when space runs short: make copies/)).toBeVisible();
    expect(persist).not.toHaveBeenCalled();
    rerender(<Asking hasOwnKept={true} />);
    expect(await screen.findByText(/^This browser promises to keep it/)).toHaveTextContent(
      'It takes about 31 MB here; about 2 GB are left.',
    );
    cleanup();
    persisted.mockResolvedValue(true);
    render(<Asking hasOwnKept={true} />);
    expect(await screen.findByText(/^This browser promises to keep it/)).toBeVisible();
    expect(persist).toHaveBeenCalledTimes(1);
  });

  it('says that the browser cannot say where it cannot', async () => {
    vi.stubGlobal('navigator', { language: 'en' });
    render(<Asking hasOwnKept={true} />);
    expect(await screen.findByText(/^This browser cannot say/)).toHaveTextContent(
      'It does not say how much room is left.',
    );
  });
});
