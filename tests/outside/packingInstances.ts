import { existsSync, readFileSync } from 'node:fs';
import { z } from 'zod';

/* The instance files lie beside the repository and are read in place; they are no part of the project. */
const folder = new URL('../../../shared/reference/packing/', import.meta.url);

export interface Instances<Instance> {
  /** Empty where the file is not there. */
  readonly instances: readonly Instance[];
  /** Why the checks are skipped; null where the file is there. */
  readonly missing: string | null;
}

function read<Schema extends z.ZodType>(name: string, schema: Schema): Instances<z.infer<Schema>> {
  const file = new URL(name, folder);
  if (!existsSync(file)) return { instances: [], missing: `${name} is not on this machine` };
  const { instances } = z
    .object({ instances: z.array(schema) })
    .parse(JSON.parse(readFileSync(file, 'utf8')));
  return { instances, missing: null };
}

const side = z.number().positive();
const pair = z.tuple([side, side]);

/**
 * Dowsland (K. Dowsland, 1984), Birgin, Lobato and Morabito (Journal of the Operational Research Society 61, 2010)
 * and other instances of the manufacturer's pallet loading problem.
 */
export const equalPieceInstances = () =>
  read(
    'identical-pieces-per-sheet.json',
    z.object({ id: z.string(), sheet: pair, piece: pair, optimum: z.int(), fiveBlockRecomputed: z.int() }),
  );

/**
 * J. Berkey, P. Wang, Journal of the Operational Research Society 38, 423-429, 1987 (classes 1 to 6); S. Martello,
 * D. Vigo, Management Science 44, 388-399, 1998 (classes 7 to 10).
 */
export const binInstances = () =>
  read(
    'berkey-wang-martello-vigo-classes.json',
    z.object({
      id: z.string(),
      binWidth: side,
      binHeight: side,
      bestKnownRotated: z.int(),
      bestKnownOriented: z.int(),
      items: z.array(pair),
    }),
  );

/** E. Hopper, B. Turton, European Journal of Operational Research 128, 34-57, 2001. */
export const stripInstances = () =>
  read(
    'hopper-turton-2001-C.json',
    z.object({ id: z.string(), stripWidth: side, optimalHeight: side, items: z.array(pair) }),
  );

/** Items of an instance as pieces. */
export const piecesOf = (items: readonly (readonly [number, number])[]) =>
  items.map(([widthMm, heightMm], index) => ({ id: `item ${index + 1}`, widthMm, heightMm, count: 1 }));
