import { readFile, writeFile } from 'node:fs/promises';
import sharp from 'sharp';

/*
 * npm run icons: draws the icons of the installed app anew, after app/icon.svg has changed. Only the tile's ground
 * differs: rounded for the eye, and to the edge with more room around the mark where the system cuts its own shape.
 */

const GROUND = '#fffdf8';
/** Systems cut at most to a circle of four fifths of the tile. */
const SAFE = 0.8;

const drawing = await readFile(new URL('../icon.svg', import.meta.url));

await write('mark-192.png', await mark(192));
await write('mark-512.png', await mark(512));
await write('mark-maskable-512.png', await tile(512));
await writeFile(new URL('../apple-icon.png', import.meta.url), await tile(180));

function mark(size: number): Promise<Buffer> {
  // Drawn at twice its size, so that thin edges stay clean.
  return sharp(drawing, { density: (72 * size * 2) / 32 })
    .resize(size, size)
    .png({ compressionLevel: 9, palette: true })
    .toBuffer();
}

async function tile(size: number): Promise<Buffer> {
  const inner = Math.round(size * SAFE);
  return sharp({ create: { width: size, height: size, channels: 4, background: GROUND } })
    .composite([{ input: await mark(inner), gravity: 'centre' }])
    .png({ compressionLevel: 9, palette: true })
    .toBuffer();
}

async function write(name: string, png: Buffer): Promise<void> {
  await writeFile(new URL(`../../public/icons/${name}`, import.meta.url), png);
}
