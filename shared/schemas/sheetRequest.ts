import { lengthMmSchema, nameSchema } from './basics';
import { z } from './z';

/** More pieces than a home workshop cuts in a week; so many are laid out within seconds. */
const MOST_PIECES = 10_000;

const distanceMmSchema = z.number().min(0).max(1_000);

/** Nobody cuts smaller ones; a slip of the unit is more likely. */
const pieceMmSchema = lengthMmSchema.min(1);

const pieceSchema = z.strictObject({
  id: nameSchema,
  widthMm: pieceMmSchema,
  heightMm: pieceMmSchema,
  count: z.int().min(1).max(MOST_PIECES),
});

/** Pieces to lay out, on sheets of one size or on a roll. */
export const sheetRequestSchema = z
  .strictObject({
    sheet: z.strictObject({ widthMm: lengthMmSchema, heightMm: lengthMmSchema }).optional(),
    roll: z.strictObject({ widthMm: lengthMmSchema }).optional(),
    marginMm: distanceMmSchema,
    gutterMm: distanceMmSchema,
    rotate: z.boolean(),
    pieces: z.array(pieceSchema).min(1).max(MOST_PIECES),
  })
  .superRefine(({ sheet, roll, pieces }, context) => {
    if ((sheet === undefined) === (roll === undefined)) {
      context.addIssue({
        code: 'custom',
        path: [sheet === undefined ? 'sheet' : 'roll'],
        message:
          sheet === undefined ? 'is missing, and there is no roll' : 'stands beside a sheet: take one out',
      });
    }
    const total = pieces.reduce((sum, { count }) => sum + count, 0);
    if (total > MOST_PIECES) {
      const message = `are ${total} together, and at most ${MOST_PIECES} are laid out at once`;
      context.addIssue({ code: 'custom', path: ['pieces'], message });
    }
    const seen = new Set<string>();
    for (const [index, { id }] of pieces.entries()) {
      if (seen.has(id)) {
        const message = 'is the name of another piece too: give each its own';
        context.addIssue({ code: 'custom', path: ['pieces', index, 'id'], message });
      }
      seen.add(id);
    }
  });

export type SheetRequest = z.infer<typeof sheetRequestSchema>;
