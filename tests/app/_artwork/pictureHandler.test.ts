// @vitest-environment node
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { DecodedPicture, PictureDecoder } from '@/app/_artwork/decodedPicture';
import type { PictureQuestion, PictureReply } from '@/app/_artwork/messages';
import { pictureHandler } from '@/app/_artwork/pictureHandler';
import { sourceOf } from '@/lib/picture/pictureSource';
import { failed, ok } from '@/shared/result';
import { pngFile, textBytes } from '@/tests/fixtures/pictures/fileBytes';
import { cyan, gridOf, white } from '@/tests/fixtures/pictures/gridOf';

const grid = gridOf(1000, 2000, (x) => (x < 500 ? cyan : white));
const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"><path d="M0 0h1v1z"/></svg>';

const read = (number: number, bytes: Uint8Array | Blob, crop = null): PictureQuestion => ({
  kind: 'read',
  number,
  file: bytes instanceof Blob ? bytes : new Blob([new Uint8Array(bytes)]),
  printWidthMm: 25.4,
  crop,
});

/** A desk whose decoder gives a picture in memory, and whose pauses do what the test asks. */
function fields({
  decode,
  onPause,
}: Partial<Pick<PictureDecoder, 'decode'>> & { onPause?: () => void } = {}) {
  const replies: PictureReply[] = [];
  const open = { count: 0 };
  const held = (): DecodedPicture => {
    open.count += 1;
    return {
      source: sourceOf(grid),
      thumbnail: () => ({ pixels: gridOf(1, 1, () => cyan), bitmap: null }),
      close: () => {
        open.count -= 1;
      },
    };
  };
  const take = pictureHandler({
    decoder: { decode: decode ?? (async () => ok(held())), hold: held },
    post: (reply) => replies.push(reply),
    pause: async () => onPause?.(),
  });
  const last = () => replies.filter(({ kind }) => kind !== 'progress');
  return { take, replies, last, open };
}

describe('the artwork worker', () => {
  it('reads a picture with progress that only rises and tells what it measured', async () => {
    const { take, replies, last, open } = fields();
    await take(read(1, pngFile(1000, 2000)));
    const shares = replies.flatMap((reply) => (reply.kind === 'progress' ? [reply.share] : []));
    expect(shares.length).toBeGreaterThan(5);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    expect(last()).toMatchObject([
      {
        kind: 'read',
        number: 1,
        reading: { size: { width: 1000, height: 2000 }, header: { format: 'png' } },
      },
    ]);
    const [reply] = last();
    // FIPS 180-4, by the platform's own hand.
    const bytes = pngFile(1000, 2000);
    if (reply?.kind === 'read') {
      expect(new Uint8Array(await reply.file.content.arrayBuffer())).toEqual(bytes);
      expect(reply.file.sha256).toBe(createHash('sha256').update(bytes).digest('hex'));
    }
    if (reply?.kind === 'read') expect(reply.reading.analysis.ink.coverage.cyan).toBeCloseTo(0.5, 12);
    expect(open.count).toBe(0);
  });

  it('refuses a bad file before any decoder sees it', async () => {
    const { take, last } = fields({ decode: () => Promise.reject(new Error('decoded')) });
    await take(read(1, pngFile(40_000, 40_000)));
    await take(read(2, textBytes('no picture')));
    await take(read(3, new Blob([])));
    expect(last()).toMatchObject([
      { kind: 'refused', number: 1, problem: { kind: 'tooLong' } },
      { kind: 'refused', number: 2, problem: { kind: 'notAPicture' } },
      { kind: 'refused', number: 3, problem: { kind: 'empty' } },
    ]);
  });

  it('refuses 5 GB without reading them', async () => {
    const { take, last } = fields();
    const huge = Object.defineProperty(new Blob(['x']), 'size', { value: 5e9 });
    huge.arrayBuffer = () => Promise.reject(new Error('read'));
    await take(read(1, huge));
    expect(last()).toMatchObject([{ kind: 'refused', problem: { kind: 'tooManyBytes', bytes: 5e9 } }]);
  });

  it('passes on what a decoder finds wrong, and tells a fault of ours as one', async () => {
    const problem = { kind: 'cannotDecode', format: 'png', why: 'bad data' } as const;
    const refusing = fields({ decode: async () => failed(problem) });
    await refusing.take(read(1, pngFile(9, 9)));
    expect(refusing.last()).toEqual([{ kind: 'refused', number: 1, problem }]);
    const broken = fields({ decode: () => Promise.reject(new Error('no surface')) });
    await broken.take(read(2, pngFile(9, 9)));
    expect(broken.last()).toEqual([{ kind: 'failed', number: 2, why: 'no surface' }]);
  });

  it('stops between two steps when cancelled, says so once, and lets the picture go', async () => {
    let pauses = 0;
    const { take, last, open } = fields({
      onPause: () => {
        pauses += 1;
        if (pauses === 2) void take({ kind: 'cancel', number: 1 });
      },
    });
    await take(read(1, pngFile(1000, 2000)));
    expect(last()).toEqual([{ kind: 'cancelled', number: 1 }]);
    expect(pauses).toBe(2);
    expect(open.count).toBe(0);
  });

  it('ends the picture before when a newer one comes', async () => {
    let next: Promise<void> | undefined;
    const { take, last, open } = fields({
      onPause: () => {
        next ??= take(read(2, pngFile(1000, 2000)));
      },
    });
    await take(read(1, pngFile(1000, 2000)));
    await next;
    expect(last()).toMatchObject([
      { kind: 'cancelled', number: 1 },
      { kind: 'read', number: 2 },
    ]);
    expect(open.count).toBe(0);
  });

  it('ignores a cancel of a picture it does not read', async () => {
    const { take, last } = fields();
    await take({ kind: 'cancel', number: 7 });
    await take(read(8, pngFile(1000, 2000)));
    await take({ kind: 'cancel', number: 8 });
    expect(last()).toMatchObject([{ kind: 'read', number: 8 }]);
  });
});

describe('a drawing of lines', () => {
  const bitmap = () => {
    const state = { closed: false };
    const image = { width: 300, height: 300, close: () => Object.assign(state, { closed: true }) };
    return { state, image: image as unknown as ImageBitmap };
  };
  const untilAsked = (last: () => readonly PictureReply[]) =>
    expect.poll(() => last().map(({ kind }) => kind), { interval: 1 }).toContain('draw');

  it('is drawn by the page at the size of its print, then measured', async () => {
    const { take, last } = fields();
    const done = take(read(1, textBytes(svg)));
    await untilAsked(last);
    expect(last()).toMatchObject([{ kind: 'draw', number: 1, size: { width: 300, height: 300 } }]);
    const [asked] = last();
    if (asked?.kind === 'draw') expect(asked.svg).toContain('width="300" height="300"');
    await take({ kind: 'drawn', number: 1, bitmap: bitmap().image });
    await done;
    expect(last()[1]).toMatchObject({ kind: 'read', reading: { header: { kind: 'vector' } } });
  });

  it('that the page cannot draw is refused', async () => {
    const { take, last } = fields();
    const done = take(read(1, textBytes(svg)));
    await untilAsked(last);
    await take({ kind: 'notDrawn', number: 1, why: 'bad path' });
    await done;
    expect(last()[1]).toMatchObject({ kind: 'refused', problem: { kind: 'cannotDecode', why: 'bad path' } });
  });

  it('that comes after its cancel is let go', async () => {
    const { take, last } = fields();
    const done = take(read(1, textBytes(svg)));
    await untilAsked(last);
    await take({ kind: 'cancel', number: 1 });
    await done;
    const { state, image } = bitmap();
    await take({ kind: 'drawn', number: 1, bitmap: image });
    expect(last().map(({ kind }) => kind)).toEqual(['draw', 'cancelled']);
    expect(state.closed).toBe(true);
  });

  it('with a script is never drawn', async () => {
    const { take, last } = fields();
    await take(read(1, textBytes(svg.replace('<path', '<script>x</script><path'))));
    expect(last()).toMatchObject([{ kind: 'refused', problem: { kind: 'svgUnsafe', found: 'script' } }]);
  });
});
