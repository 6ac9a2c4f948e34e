// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type Lazy, lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

const Drawing = () => <p>The drawing itself</p>;

function Page({ code }: Readonly<{ code: Lazy<typeof Drawing> }>) {
  const fetched = useLazy(code);
  if (fetched.kind === 'coming') return <p>Coming</p>;
  if (fetched.kind === 'missing') return <PartMissing what="The drawing" missing={fetched} />;
  return <fetched.value />;
}

/** Code that cannot be fetched until the network is mended. */
function codeOverNetwork() {
  const network = { isUp: false, asked: 0 };
  const code = lazy(async () => {
    network.asked += 1;
    if (!network.isUp) throw new Error('Failed to load chunk');
    return Drawing;
  });
  return { network, page: <Page code={code} /> };
}

const settled = () => act(async () => undefined);

describe('a part of the page whose code is fetched when it is needed', () => {
  it('says that it could not be fetched, and comes by “Try again”', async () => {
    const { network, page } = codeOverNetwork();
    render(page);
    await settled();
    expect(screen.getByRole('alert')).toHaveTextContent(/The drawing could not be fetched/);
    network.isUp = true;
    fireEvent.click(screen.getByRole('button', { name: 'Try again' }));
    await settled();
    expect(screen.getByText('The drawing itself')).toBeInTheDocument();
  });

  it('says that it is tried again, and says anew when that fails too', async () => {
    const { page } = codeOverNetwork();
    render(page);
    await settled();
    fireEvent.click(screen.getByRole('button', { name: 'Try again' }));
    expect(screen.getByRole('alert')).toHaveTextContent(/Trying again/);
    await settled();
    expect(screen.getByRole('alert')).toHaveTextContent(/could not be fetched/);
  });

  it('comes by itself when the network is back', async () => {
    const { network, page } = codeOverNetwork();
    render(page);
    await settled();
    network.isUp = true;
    window.dispatchEvent(new Event('online'));
    await settled();
    expect(screen.getByText('The drawing itself')).toBeInTheDocument();
  });

  it('comes by itself after a while where nobody says that the network is back', async () => {
    const { network, page } = codeOverNetwork();
    render(page);
    await settled();
    network.isUp = true;
    await act(() => vi.advanceTimersByTimeAsync(1_000));
    expect(screen.getByText('The drawing itself')).toBeInTheDocument();
  });

  it('is fetched once, and stands at once where it is shown again', async () => {
    const { network, page } = codeOverNetwork();
    network.isUp = true;
    render(page);
    await settled();
    cleanup();
    render(page);
    expect(screen.getByText('The drawing itself')).toBeInTheDocument();
    expect(network.asked).toBe(1);
  });

  it('is told apart where the server no longer has it, and the page is offered anew once', async () => {
    const file = '/_next/static/chunks/drawing.js';
    vi.stubGlobal(
      'fetch',
      async (asked: string) => new Response(null, { status: asked === file ? 404 : 500 }),
    );
    const code = lazy(async (): Promise<typeof Drawing> => {
      throw new Error(`Failed to load chunk ${file} from module 7`);
    });
    render(<Page code={code} />);
    await settled();
    expect(screen.getByRole('alert')).toHaveTextContent(/no longer this part.*Open the page anew/);
    fireEvent.click(screen.getByRole('button', { name: 'Open it anew' }));
    cleanup();
    // As the page reads when it was opened anew and the file is still not there.
    render(<Page code={code} />);
    await settled();
    expect(screen.getByRole('alert')).toHaveTextContent(/Opening the page anew did not help/);
    expect(screen.queryByRole('button')).not.toBeInTheDocument();
    vi.unstubAllGlobals();
    sessionStorage.clear();
  });
});
