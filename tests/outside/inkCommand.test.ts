// @vitest-environment node
import { spawn } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { pngFile, textBytes } from '@/tests/fixtures/pictures/fileBytes';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'ink-'));
});
afterAll(() => rm(folder, { recursive: true }));

interface Outcome {
  readonly code: number | null;
  readonly out: string;
  readonly said: string;
}

function ink(...words: readonly string[]): Promise<Outcome> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [
      'node_modules/tsx/dist/cli.mjs',
      'app/_commands/ink.ts',
      ...words,
    ]);
    let out = '';
    let said = '';
    child.stdout.on('data', (piece) => {
      out += piece;
    });
    child.stderr.on('data', (piece) => {
      said += piece;
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, said }));
  });
}

async function saved(name: string, bytes: Uint8Array): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, bytes);
  return path;
}

test('npm run ink gives pixels, densities, coverage and millilitres of a picture', {
  timeout: 60_000,
}, async () => {
  const half = await sharp({ create: { width: 300, height: 600, channels: 3, background: '#fff' } })
    .composite([
      { input: { create: { width: 150, height: 600, channels: 3, background: '#0ff' } }, left: 0, top: 0 },
    ])
    .png()
    .withMetadata({ density: 300 })
    .toBuffer();
  const { code, out, said } = await ink(await saved('half.png', half), '--width-mm', '50.8');
  expect([code, said]).toEqual([0, '']);
  const { density, mL, ...rest } = JSON.parse(out);
  expect(rest).toEqual({
    pixels: { width: 300, height: 600 },
    ppi: 150,
    coverage: { C: 0.5, M: 0, Y: 0, K: 0 },
    blackShare: 0.5,
    heavyShare: 0,
  });
  expect(density).toBeCloseTo(299.9994, 4);
  // 2 × 4 in, half covered, 0.0065 mL an in² and a tenth lost.
  expect(mL).toBeCloseTo(8 * 0.5 * 0.0065 * 1.1, 12);
});

test('npm run ink prints as much of the grey with black as it is told', { timeout: 60_000 }, async () => {
  const square = await sharp({ create: { width: 100, height: 100, channels: 3, background: '#000' } })
    .png()
    .toBuffer();
  const path = await saved('black.png', square);
  const [typical, none, all] = await Promise.all([
    ink(path, '--width-mm', '25.4'),
    ink('--black-share=0', path, '--width-mm', '25.4'),
    ink(path, '--black-share', '100', '--width-mm=25.4'),
  ]);
  // A square inch of black: 200, 300 and 100 % of 0.0065 mL with a tenth lost. 300 % floods every pixel.
  const read = ({ out }: Outcome) => JSON.parse(out);
  expect(read(typical)).toMatchObject({ coverage: { C: 0.5, M: 0.5, Y: 0.5, K: 0.5 }, heavyShare: 0 });
  expect(read(none)).toMatchObject({ coverage: { C: 1, M: 1, Y: 1, K: 0 }, blackShare: 0, heavyShare: 1 });
  expect(read(all)).toMatchObject({ coverage: { C: 0, M: 0, Y: 0, K: 1 }, heavyShare: 0 });
  for (const [told, total] of [
    [typical, 2],
    [none, 3],
    [all, 1],
  ] as const) {
    expect(read(told).mL).toBeCloseTo(total * 0.0065 * 1.1, 12);
  }
  const { code, said } = await ink(path, '--width-mm', '100', '--black-share', '101');
  expect([code, said]).toEqual([1, expect.stringMatching(/per cent from 0 to 100/)]);
});

test('a picture or a word that cannot be used is one sentence on standard error and code 1', {
  timeout: 120_000,
}, async () => {
  const noise = await sharp({
    create: {
      width: 300,
      height: 300,
      channels: 3,
      background: '#808080',
      noise: { type: 'gaussian', mean: 128, sigma: 50 },
    },
  })
    .png()
    .toBuffer();
  const cmyk = await sharp({ create: { width: 30, height: 30, channels: 3, background: '#0ff' } })
    .toColourspace('cmyk')
    .jpeg()
    .toBuffer();
  const spoiled = Uint8Array.from(noise);
  spoiled.fill(1, 100, 4_000);
  const bad: readonly (readonly [readonly string[], RegExp])[] = [
    [[await saved('empty.png', new Uint8Array())], /empty/],
    [[await saved('cut.png', noise.subarray(0, 9_000))], /ends before its picture/],
    [[await saved('spoiled.png', spoiled)], /The PNG file is damaged/],
    [[await saved('bomb.png', pngFile(40_000, 40_000))], /40,000 × 40,000 px/],
    [[await saved('cmyk.jpg', cmyk)], /CMYK/],
    [
      [
        await saved(
          'remote.svg',
          textBytes('<svg viewBox="0 0 1 1"><image href="https://a.example/b"/></svg>'),
        ),
      ],
      /outside the file/,
    ],
    [[folder], /cannot be read/],
  ];
  const sentences = new Set<string>();
  for (const [[path = ''], says] of bad) {
    const { code, out, said } = await ink(path, '--width-mm', '100');
    expect([code, out], said).toEqual([1, '']);
    expect(said).toMatch(says);
    expect(said.trim().split('\n'), said).toHaveLength(1);
    sentences.add(said.replaceAll(path, ''));
  }
  expect(sentences.size).toBe(bad.length);
  for (const words of [[], ['a.png', '--width-mm', '-5']]) {
    const { code, out, said } = await ink(...words);
    expect([code, out], words.join(' ')).toEqual([1, '']);
    expect(said).toMatch(/width/);
  }
});
