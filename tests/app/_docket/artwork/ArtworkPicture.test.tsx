// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { PictureNews } from '@/app/_artwork/artworkService';
import type { PictureReading } from '@/app/_artwork/messages';
import { lazyArtworkPicture } from '@/app/_docket/artwork/lazyArtworkPicture';
import { sha256OfBytes } from '@/lib/stored/sha256';
import { bytesOfFile } from '@/lib/stored/storedFile';
import type { Picture } from '@/shared/schemas/picture';
import type { Printer } from '@/shared/schemas/workshop';
import { benchStore, clearBench, kept } from '@/tests/app/_docket/bench';
import { layOut } from '@/tests/app/_docket/layOut';
import { aPicture } from '@/tests/fixtures/aPicture';

const reader = vi.hoisted(() => ({
  say: vi.fn() as (news: PictureNews) => void,
  cancel: vi.fn(),
  picture: null as unknown,
}));

vi.mock('@/app/_store/appDocuments', async () => {
  const { benchStore: appDocuments } = await import('@/tests/app/_docket/bench');
  return { appDocuments };
});
vi.mock('@/app/_pricing/priceService', async () => {
  const { benchPrices: prices } = await import('@/tests/app/_docket/bench');
  return { startPriceService: prices.start };
});
vi.mock('@/app/_artwork/appArtwork', () => ({
  appArtwork: () => ({
    read: (_file: Blob, _wanted: unknown, onNews: (news: PictureNews) => void) => {
      reader.say = onNews;
      return { cancel: reader.cancel };
    },
    stop: () => undefined,
  }),
}));
vi.mock('@/app/_artwork/pictureOfReading', () => ({
  pictureOfReading: (_: PictureReading, file: Partial<Picture>) => ({
    ...(reader.picture as Picture),
    ...file,
  }),
}));
// The tests' browser draws nothing.
vi.mock('@/app/_artwork/previews', () => ({
  appPreviews: () => ({ of: async () => null, give: () => undefined }),
}));

// Unpacking this code takes a busy machine longer than a screen is waited for.
beforeAll(async () => {
  await lazyArtworkPicture.fetch();
});

beforeEach(() => {
  reader.picture = aPicture();
  reader.cancel.mockClear();
});
afterEach(() => {
  cleanup();
  clearBench();
});

const NAME = 'Hill path picture';

async function openPart() {
  await layOut();
  fireEvent.click(screen.getByRole('button', { name: /^Back picture/ }));
  return within(await screen.findByRole('group', { name: `The picture, ${NAME}` }));
}

const choose = (part: Awaited<ReturnType<typeof openPart>>) =>
  fireEvent.change(part.getByLabelText(`Picture file of ${NAME}`), {
    target: { files: [new File([new Uint8Array([7, 8])], 'hill-path.png')] },
  });

/** What the worker says of a file of these bytes. */
function readNews(number: number, ...bytes: readonly number[]): PictureNews {
  const content = Uint8Array.from(bytes.length === 0 ? [7, 8] : bytes);
  const file = { sha256: sha256OfBytes(content), content: new Blob([content]) };
  return { kind: 'read', number, reading: {} as PictureReading, file, preview: null };
}

async function takeIn(picture: Partial<Picture> = {}) {
  reader.picture = aPicture(picture);
  const part = await openPart();
  choose(part);
  act(() => reader.say(readNews(1)));
  await part.findByText(/of ink$/);
  return part;
}

describe('a picture brought in', () => {
  it('becomes pixels and ink of the artwork, with its file, as one step that undo names', async () => {
    const part = await takeIn();
    const { pixels, coverage, picture } = kept.artwork('hill-path');
    expect(pixels).toEqual({ width: 1600, height: 2000 });
    expect(coverage).toBeNull();
    expect(picture).toMatchObject({ fileName: 'hill-path.png', bytes: 2 });
    expect(kept.undoLabel()).toBe(`Picture of ${NAME}`);
    const file = await benchStore().actions.readFile(picture?.fileId ?? '');
    expect(file && (await bytesOfFile(file))).toEqual(new Uint8Array([7, 8]));
    expect(part.getByText('95 % of ink')).toBeInTheDocument();
    expect(part.getByText('200 ppi')).toBeInTheDocument();
    await act(() => benchStore().actions.undo());
    expect(kept.artwork('hill-path')).toMatchObject({
      picture: null,
      pixels: { width: 1500, height: 1800 },
      coverage: { kind: 'total', total: 1.1 },
    });
  });

  it('is where the ink of a print leads to', async () => {
    const part = await takeIn();
    fireEvent.click(await part.findByRole('button', { name: /^Ink of one print/ }));
    fireEvent.click(await part.findByRole('button', { name: /^Ink coverage/ }));
    expect(await part.findByText(/read from the file “hill-path\.png”/)).toBeInTheDocument();
  });

  it('says how far it is, and can be stopped', async () => {
    const part = await openPart();
    choose(part);
    act(() => reader.say({ kind: 'progress', number: 1, stage: 'measuring', share: 0.7 }));
    expect(part.getByRole('progressbar')).toHaveAttribute('value', '0.7');
    fireEvent.click(part.getByRole('button', { name: 'Stop' }));
    expect(reader.cancel).toHaveBeenCalledOnce();
    act(() => reader.say({ kind: 'cancelled', number: 1 }));
    expect(part.getByText(/You stopped it; nothing was changed/)).toBeInTheDocument();
    expect(part.queryByRole('progressbar')).toBeNull();
    expect(kept.artwork('hill-path').picture).toBeNull();
  });

  it.each<[string, PictureNews, RegExp]>([
    [
      'a file that is refused',
      { kind: 'refused', number: 1, problem: { kind: 'empty' } },
      /The file is empty/,
    ],
    ['a fault of the app', { kind: 'failed', number: 1, why: 'no surface' }, /not in the file: no surface/],
  ])('leaves what is there for %s, and says why', async (_, news, sentence) => {
    const part = await takeIn();
    choose(part);
    act(() => reader.say(news));
    expect(part.getByRole('status')).toHaveTextContent(sentence);
    expect(kept.artwork('hill-path').picture?.fileName).toBe('hill-path.png');
    expect(part.getByText('95 % of ink')).toBeInTheDocument();
  });

  it('takes one file at a time', async () => {
    const part = await openPart();
    const zone = part.getByRole('button', { name: 'Choose the picture' });
    const files = [new File(['x'], 'a.png'), new File(['x'], 'b.png')];
    fireEvent.drop(zone, { dataTransfer: { files } });
    expect(part.getByRole('status')).toHaveTextContent('Those were 2 files.');
    fireEvent.paste(zone, { clipboardData: { files: [] } });
    expect(part.getByRole('status')).toHaveTextContent('There was no picture file in it.');
  });
});

describe('ink and the printer of the job', () => {
  const blackShare = (value: number) => ({
    value,
    unit: 'share' as const,
    date: '2026-11-25',
    origin: 'yours' as const,
  });
  const printerWith = (fields: Partial<Printer>) =>
    act(() => {
      benchStore().actions.edit('Printer', [
        {
          do: 'change',
          kind: 'workshop',
          id: 'workshop',
          to: (body) => ({ ...body, printers: body.printers.map((one) => ({ ...one, ...fields })) }),
        },
      ]);
    });

  it('is said with how much of the grey it prints with black, and follows the printer', async () => {
    const part = await takeIn();
    expect(part.getByText(/prints 50 % of the grey with black, the rest with all three/)).toBeInTheDocument();
    expect(part.getByRole('link', { name: 'Change it at the printer' })).toHaveAttribute(
      'href',
      '/workshop#workshop-printers-0-blackShare',
    );
    // 30, 25, 20 and 10 %, the 10 % grey in all three inks instead of black: 75 + 30 %.
    printerWith({ blackShare: blackShare(0), lightInks: true });
    expect(await part.findByText('105 % of ink')).toBeInTheDocument();
    expect(part.getByText(/prints grey without black/)).toBeInTheDocument();
    expect(part.getByText(/has light inks, which are not counted apart/)).toBeInTheDocument();
    printerWith({ blackShare: blackShare(1), lightInks: false });
    expect(await part.findByText('85 % of ink')).toBeInTheDocument();
    expect(part.queryByText(/light inks/)).toBeNull();
  });

  it('offers to read a picture again whose grey nobody measured, and keeps what was said of it', async () => {
    const accepted = { box: true, white: false };
    const part = await takeIn({ grey: null, accepted });
    act(() => {
      benchStore().actions.edit('Ink', [
        {
          do: 'change',
          kind: 'artwork',
          id: 'hill-path',
          to: (body) => ({ ...body, coverage: { kind: 'total', total: 1.3 } }),
        },
      ]);
    });
    reader.picture = aPicture();
    await act(async () => fireEvent.click(part.getByRole('button', { name: 'Read the file again' })));
    act(() => reader.say(readNews(2)));
    await waitFor(() => expect(kept.artwork('hill-path').picture?.grey).not.toBeNull());
    expect(kept.artwork('hill-path')).toMatchObject({
      coverage: { kind: 'total', total: 1.3 },
      picture: { accepted, fileName: 'hill-path.png' },
    });
    expect(kept.undoLabel()).toBe(`Picture of ${NAME}, read again`);
    expect(part.queryByRole('button', { name: 'Read the file again' })).toBeNull();
  });
});

describe('a picture that is there', () => {
  it('gives way to the maker’s own ink figure, and back', async () => {
    const part = await takeIn();
    act(() => {
      benchStore().actions.edit('Ink', [
        {
          do: 'change',
          kind: 'artwork',
          id: 'hill-path',
          to: (body) => ({ ...body, coverage: { kind: 'total', total: 1.4 } }),
        },
      ]);
    });
    expect(part.getByText(/your own figure, 140 %/)).toBeInTheDocument();
    fireEvent.click(part.getByRole('button', { name: 'Use what was read' }));
    expect(kept.artwork('hill-path').coverage).toBeNull();
  });

  it('asks about a solid background, and takes the answer back', async () => {
    const part = await takeIn({ background: { rgb: [200, 30, 30], ink: 1.1, prints: true } });
    fireEvent.click(part.getByRole('button', { name: 'It is meant so' }));
    expect(kept.artwork('hill-path').picture?.accepted.box).toBe(true);
    fireEvent.click(part.getByRole('button', { name: 'Take that back' }));
    expect(kept.artwork('hill-path').picture?.accepted.box).toBe(false);
  });

  it('tells of bare strips and clear edges', async () => {
    const part = await takeIn({
      width: 2000,
      height: 2000,
      content: { x: 0, y: 0, width: 1800, height: 2000 },
    });
    expect(
      part.getByText(/comes out at 8 × 8 in, with 1 in of bare cloth above and below/),
    ).toBeInTheDocument();
    expect(part.getByText(/Clear edges take 0.8 in of its width/)).toBeInTheDocument();
  });

  it('is printed without its clear edges at one press, at the scale it had, and with them again', async () => {
    const part = await takeIn({ content: { x: 200, y: 250, width: 1200, height: 1500 } });
    // 1600 × 2000 px fill 8 × 10 in; the 1200 × 1500 px left are 6 × 7.5 in.
    fireEvent.click(part.getByRole('button', { name: 'Trim the clear edges' }));
    expect(kept.artwork('hill-path').picture?.trimmed).toBe(true);
    const size = () => kept.job().lines[0]?.placements[0]?.prints[0];
    expect(size()?.widthMm).toBeCloseTo(6 * 25.4, 9);
    expect(size()?.heightMm).toBeCloseTo(7.5 * 25.4, 9);
    expect(part.getByText('200 ppi')).toBeInTheDocument();
    fireEvent.click(part.getByRole('button', { name: 'Put the edges back' }));
    expect(kept.artwork('hill-path').picture?.trimmed).toBe(false);
    expect(size()).toMatchObject({ widthMm: 8 * 25.4, heightMm: 10 * 25.4 });
  });

  it('is another version where it follows one that was approved, and undo brings the approved one back', async () => {
    const part = await takeIn();
    const of = () => kept.artwork('hill-path');
    const { version } = of();
    act(() => {
      void benchStore().actions.note('Approval', [
        { kind: 'approval', body: { artworkId: 'hill-path', version } },
      ]);
    });
    // The same file again is no other picture.
    choose(part);
    act(() => reader.say(readNews(2)));
    await waitFor(() => expect(part.queryByRole('progressbar')).toBeNull());
    expect(of().version).toBe(version);
    fireEvent.change(part.getByLabelText(`Picture file of ${NAME}`), {
      target: { files: [new File([new Uint8Array([9])], 'another.png')] },
    });
    act(() => reader.say(readNews(3, 9)));
    await waitFor(() => expect(of().picture?.fileName).toBe('another.png'));
    expect(of().version).toBe(version + 1);
    await act(() => benchStore().actions.undo());
    expect(of()).toMatchObject({ version, picture: { fileName: 'hill-path.png' } });
    fireEvent.click(part.getByRole('button', { name: /^Take the picture out/ }));
    expect(of()).toMatchObject({ version: version + 1, picture: null });
  });

  it('can be taken out; its pixels stay as figures entered by hand', async () => {
    const part = await takeIn();
    fireEvent.click(part.getByRole('button', { name: /^Take the picture out/ }));
    expect(kept.artwork('hill-path')).toMatchObject({ picture: null, pixels: { width: 1600, height: 2000 } });
  });

  it('says so where its file is not on this device', async () => {
    const part = await takeIn();
    await waitFor(() => expect(part.getByText(/no longer on this device/)).toBeInTheDocument());
  });
});
