import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type SheetRequest, sheetRequestSchema } from '@/shared/schemas/sheetRequest';

const root = fileURLToPath(new URL('../../..', import.meta.url));
let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sheets-'));
});
afterAll(() => rm(folder, { recursive: true }));

interface Run {
  readonly code: number;
  readonly output: string;
  readonly errors: string;
}

async function run(text: string): Promise<Run> {
  const file = join(folder, 'request.json');
  await writeFile(file, text);
  return new Promise((resolve) => {
    execFile(
      process.execPath,
      ['node_modules/tsx/dist/cli.mjs', 'app/_commands/sheets.ts', file],
      { cwd: root, maxBuffer: 1e8 },
      (error, output, errors) => resolve({ code: Number(error?.code ?? 0), output, errors }),
    );
  });
}

const request = (more: object = {}) => ({
  sheet: { widthMm: 210, heightMm: 297 },
  marginMm: 5,
  gutterMm: 3,
  rotate: true,
  pieces: [{ id: 'badge', widthMm: 80, heightMm: 60, count: 3 }],
  ...more,
});

describe('npm run sheets', () => {
  it('answers with sheets, their count and the least there can be', async () => {
    const { code, output, errors } = await run(JSON.stringify(request()));
    expect([code, errors]).toEqual([0, '']);
    const answer = JSON.parse(output);
    expect(answer).toMatchObject({ count: 1, lowerBound: 1 });
    expect(answer.sheets[0].pieces[0]).toEqual({
      id: 'badge',
      xMm: 5,
      yMm: 5,
      widthMm: 80,
      heightMm: 60,
      turned: false,
    });
  }, 30_000);

  it('answers with the length of a roll', async () => {
    const { code, output } = await run(JSON.stringify(request({ sheet: undefined, roll: { widthMm: 610 } })));
    expect(code).toBe(0);
    expect(JSON.parse(output)).toMatchObject({ rollLengthMm: 70, lowerBoundMm: 70 });
  }, 30_000);

  it('names each piece that does not fit, with the largest size that does', async () => {
    const pieces = [{ id: 'banner', widthMm: 400, heightMm: 100, count: 1 }];
    const { code, output, errors } = await run(JSON.stringify(request({ pieces })));
    expect(code).toBe(2);
    expect(JSON.parse(output).tooLarge).toMatchObject([{ id: 'banner', largestWidthMm: 287 }]);
    expect(errors).toContain('“banner” of 400 mm × 100 mm does not fit');
    expect(errors).toContain('287 mm × 71.75 mm');
  }, 30_000);

  it.each([
    ['{"sheet": {', 'is not JSON'],
    [
      JSON.stringify(request({ marginMm: 105 })),
      'Margins of 105 mm leave nothing of a sheet of 210 mm × 297 mm',
    ],
    [JSON.stringify(request({ grain: true })), '“grain” is no field known there'],
  ])(
    'says in a sentence what is wrong with %s',
    async (text, sentence) => {
      const { code, output, errors } = await run(text);
      expect([code, output]).toEqual([1, '']);
      expect(errors).toContain(sentence);
      expect(errors).not.toContain('    at ');
    },
    30_000,
  );
});

describe('a file of pieces', () => {
  const [piece] = request().pieces;

  it.each<[string, object]>([
    ['no pieces', { pieces: [] }],
    ['a count of nothing', { pieces: [{ ...piece, count: 0 }] }],
    ['half a piece', { pieces: [{ ...piece, count: 1.5 }] }],
    ['too many pieces', { pieces: [{ ...piece, count: 10_001 }] }],
    [
      'too many together',
      {
        pieces: [
          { ...piece, count: 6_000 },
          { ...piece, id: 'b', count: 6_000 },
        ],
      },
    ],
    ['two of one name', { pieces: [piece, piece] }],
    ['a piece without an extent', { pieces: [{ ...piece, widthMm: 0 }] }],
    ['a speck', { pieces: [{ ...piece, widthMm: 0.5 }] }],
    ['a piece of endless width', { pieces: [{ ...piece, widthMm: 1e300 }] }],
    ['text for a number', { marginMm: '5' }],
    ['a margin below nothing', { marginMm: -1 }],
    ['a gutter below nothing', { gutterMm: -1 }],
    ['a sheet and a roll', { roll: { widthMm: 610 } }],
    ['neither', { sheet: undefined }],
    ['an unknown field', { grain: true }],
    ['an unknown field of a piece', { pieces: [{ ...piece, colour: 'red' }] }],
  ])('is refused with %s', (_, more) => {
    expect(sheetRequestSchema.safeParse(request(more)).success).toBe(false);
  });

  it('is read with ten thousand pieces', () => {
    const read: SheetRequest = sheetRequestSchema.parse(request({ pieces: [{ ...piece, count: 10_000 }] }));
    expect(read.pieces[0]?.count).toBe(10_000);
  });
});
