import type { Locator, Page } from 'playwright-core';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { expectPriceBar, kept, priceBarText, priced, section, unfold } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage, type PageOptions } from '@/tests/e2e/harness/openPage';
import { gridOf } from '@/tests/fixtures/pictures/gridOf';

const PICTURE = 'Hill path picture';

/** Unfolds the placement that prints the picture. */
async function openPlacement(page: Page): Promise<Locator> {
  await priced(page);
  const job = section(page, 'The job');
  await unfold(job, /^Back picture/);
  return job.getByRole('group', { name: `The picture, ${PICTURE}` });
}

const chooseFile = (part: Locator, name: string, mimeType: string, buffer: Buffer) =>
  part.getByLabel(`Picture file of ${PICTURE}`).setInputFiles({ name, mimeType, buffer });

/** Cyan to the left, white to the right: half of the picture is one full channel. */
const half = (width = 1600, height = 2000) =>
  sharp(gridOf(width, height, (x) => (x < width / 2 ? [0, 255, 255, 255] : [255, 255, 255, 255])).rgba, {
    raw: { width, height, channels: 4 },
  })
    .png()
    .toBuffer();

async function withPicture(options: PageOptions = {}) {
  const page = await openPage(options);
  const part = await openPlacement(page);
  await chooseFile(part, 'hill.png', 'image/png', await half());
  await part.getByText('50 % of ink').waitFor();
  return { page, part };
}

test.each([1280, 390])('a picture is read, shown on the cloth and told of at %d px', async (width) => {
  const { page, part } = await withPicture({ width });
  await part.getByText('200 ppi').waitFor();
  await part.getByText(/hill\.png, PNG/).waitFor();
  await part.locator('canvas[data-drawn="true"]').waitFor();
  await part.getByRole('button', { name: /^Ink of one print/ }).waitFor();
  await looksRight(page, 'artwork');
});

test('the preview shows ink multiplied with the cloth, and the print’s own half of it', async () => {
  const { part } = await withPicture();
  const canvas = part.locator('canvas[data-drawn="true"]');
  await canvas.waitFor();
  const seen = await canvas.evaluate((element) => {
    const drawn = element as HTMLCanvasElement;
    const at = (share: number) => [
      ...(drawn.getContext('2d')?.getImageData(drawn.width * share, drawn.height / 2, 1, 1).data ?? []),
    ];
    return { inked: at(0.25), bare: at(0.75), shape: drawn.width / drawn.height };
  });
  expect(seen.shape).toBeCloseTo(0.8, 1);
  expect(seen.inked[0]).toBeLessThan(10);
  expect(seen.inked[1]).toBeGreaterThan(230);
  // A white shirt, a little off the white of the screen.
  expect(Math.min(...seen.bare)).toBeGreaterThan(225);
});

test('a picture stored on its side is turned upright once, in its figures and in the preview', async () => {
  const page = await openPage();
  const part = await openPlacement(page);
  // Stored 2000 × 1600 with cyan above; a quarter turn to the right brings it to the right side.
  const above = gridOf(2000, 1600, (_, y) => (y < 800 ? [0, 255, 255, 255] : [255, 255, 255, 255]));
  const turned = await sharp(above.rgba, { raw: { width: 2000, height: 1600, channels: 4 } })
    .removeAlpha()
    .jpeg({ quality: 100 })
    .withMetadata({ orientation: 6 })
    .toBuffer();
  await chooseFile(part, 'turned.jpg', 'image/jpeg', turned);
  await part.getByText('1,600 × 2,000').waitFor();
  await part.getByText('200 ppi').waitFor();
  const canvas = part.locator('canvas[data-drawn="true"]');
  await canvas.waitFor();
  const reds = await canvas.evaluate((element) => {
    const drawn = element as HTMLCanvasElement;
    return [0.25, 0.75].map(
      (share) => drawn.getContext('2d')?.getImageData(drawn.width * share, drawn.height / 2, 1, 1).data[0],
    );
  });
  expect(reds[0]).toBeGreaterThan(220);
  expect(reds[1]).toBeLessThan(20);
});

test('price and ink follow the picture, are undone and redone, and are there after a reload', async () => {
  const page = await openPage();
  const part = await openPlacement(page);
  const before = await priceBarText(page);
  await chooseFile(part, 'hill.png', 'image/png', await half());
  await part.getByText('50 % of ink').waitFor();
  await expectPriceBar(page, /margin 40\.9 %/);
  expect(await priceBarText(page)).not.toBe(before);
  const after = await priceBarText(page);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(() => priceBarText(page)).toBe(before);
  await page.getByRole('button', { name: /^Redo/ }).click();
  await expect.poll(() => priceBarText(page)).toBe(after);
  await kept(page);
  await page.reload();
  // The fold stands open as it was left.
  await section(page, 'The job')
    .getByRole('group', { name: `The picture, ${PICTURE}` })
    .waitFor();
  const again = await openPlacement(page);
  await again.getByText('50 % of ink').waitFor();
  await again.locator('canvas[data-drawn="true"]').waitFor();
  await expect.poll(() => priceBarText(page)).toBe(after);
});

const noPictures = [
  ['empty.png', async () => Buffer.alloc(0), 'The file is empty.'],
  ['notes.png', async () => Buffer.from('these are notes, not a picture'), 'The file is not a picture'],
  ['cut.png', async () => (await half()).subarray(0, 900), 'ends before its picture does'],
  [
    'script.svg',
    async () =>
      Buffer.from(
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><script>alert(1)</script></svg>',
      ),
    'The SVG holds a script',
  ],
  [
    'remote.svg',
    async () =>
      Buffer.from(
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><image href="https://example.org/a.png"/></svg>',
      ),
    'a reference to something outside',
  ],
] as const;

test('files that are no pictures are refused in a sentence each, and the last good picture stays', async () => {
  const { page, part } = await withPicture();
  await expectPriceBar(page, /margin 40\.9 %/);
  const priceBar = await priceBarText(page);
  for (const [name, bytes, sentence] of noPictures) {
    await chooseFile(part, name, name.endsWith('svg') ? 'image/svg+xml' : 'image/png', await bytes());
    await part.getByText(sentence).waitFor();
    await expect.poll(() => part.getByText('50 % of ink').count(), { message: name }).toBe(1);
    expect(await priceBarText(page), name).toBe(priceBar);
  }
});

test('a drawing of lines is read at its final size and clean at any', async () => {
  const page = await openPage();
  const part = await openPlacement(page);
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 80 100"><rect width="40" height="100" fill="#0ff"/></svg>';
  await chooseFile(part, 'path.svg', 'image/svg+xml', Buffer.from(svg));
  await part.getByText('50 % of ink').waitFor();
  await part.getByText('A drawing, clean at any size').waitFor();
  await part.locator('canvas[data-drawn="true"]').waitFor();
});

test('a dropped and a pasted picture are taken like a chosen one', async () => {
  const page = await openPage();
  const part = await openPlacement(page);
  const bytes = [...(await half(400, 500))];
  const bring = (way: 'drop' | 'paste') =>
    part.getByRole('button', { name: /^Choose/ }).evaluate(
      (element, given) => {
        const transfer = new DataTransfer();
        transfer.items.add(
          new File([new Uint8Array(given.bytes)], `${given.way}.png`, { type: 'image/png' }),
        );
        element.dispatchEvent(
          given.way === 'drop'
            ? new DragEvent('drop', { dataTransfer: transfer, bubbles: true, cancelable: true })
            : new ClipboardEvent('paste', { clipboardData: transfer, bubbles: true, cancelable: true }),
        );
      },
      { bytes, way },
    );
  for (const way of ['drop', 'paste'] as const) {
    await bring(way);
    await part.getByText(`${way}.png, PNG`).waitFor();
  }
});
