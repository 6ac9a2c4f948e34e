import { describe, expect, it } from 'vitest';
import { inkColour } from '@/app/_docket/placement/inkColour';
import { pieceDrawing } from '@/app/_docket/placement/pieceDrawing';
import { club } from '@/tests/fixtures/clubJob';

const garment = { kind: 'garment', substrate: 'polyesterShirt' } as const;
const size = { widthMm: 500, wrap: null };
const print = { widthMm: 200, heightMm: 250 };
const drawn = { blank: garment, size, print, dropFromCollarMm: 80 };
const middle = ({ print: { x, width } }: ReturnType<typeof pieceDrawing>) => x + width / 2;

describe('a drawn piece', () => {
  it('shows a print at its true size, in the middle of back and front', () => {
    for (const position of ['back', 'front'] as const) {
      const piece = pieceDrawing({ ...drawn, position });
      expect(piece.print).toMatchObject({ width: 200, height: 250 });
      expect(middle(piece)).toBe(250);
    }
  });

  it('shows the left chest of the wearer on the right of whoever looks', () => {
    expect(middle(pieceDrawing({ ...drawn, position: 'leftChest' }))).toBeGreaterThan(300);
    expect(middle(pieceDrawing({ ...drawn, position: 'rightChest' }))).toBeLessThan(200);
  });

  it('moves a print down with its measure from the collar', () => {
    const top = (dropFromCollarMm: number) =>
      pieceDrawing({ ...drawn, position: 'front', dropFromCollarMm }).print.y;
    expect(top(120) - top(80)).toBe(40);
  });

  it('shows of a print round a mug no more than the side that faces', () => {
    // 300 mm round is 95.5 mm across.
    const mug = pieceDrawing({
      ...drawn,
      blank: { kind: 'drinkware', substrate: 'ceramicMug' },
      size: { widthMm: null, wrap: { circumferenceMm: 300, handleGapMm: 30, taperDegrees: 0 } },
      position: 'wrap',
      print: { widthMm: 250, heightMm: 90 },
    });
    expect(mug.print.width).toBeCloseTo(95.49, 2);
    expect(mug.outlines).toHaveLength(2);
  });

  it.each(['garment', 'bag', 'cushion', 'drinkware', 'panel', 'mat', 'tile', 'small'] as const)(
    'holds the print of a %s inside its frame where nobody measured',
    (kind) => {
      const piece = pieceDrawing({
        blank: { kind, substrate: 'coatedHardboard' },
        size: undefined,
        position: 'face',
        print: { widthMm: 80, heightMm: 60 },
        dropFromCollarMm: null,
      });
      const [x, y, width, height] = piece.box;
      expect(piece.print.x).toBeGreaterThan(x);
      expect(piece.print.y).toBeGreaterThan(y);
      expect(piece.print.x + piece.print.width).toBeLessThan(x + width);
      expect(piece.print.y + piece.print.height).toBeLessThan(y + height);
    },
  );
});

describe('the colour of a print', () => {
  const artwork = club().artworks['club-crest'];
  if (artwork === undefined) throw new Error('the example has a crest');

  it('is that of its inks, and of none where only their sum is known', () => {
    const channels = { kind: 'channels', cyan: 1, magenta: 0, yellow: 0.2, black: 0.5 } as const;
    expect(inkColour({ ...artwork, coverage: channels })).toBe('rgb(0 128 102)');
    expect(inkColour(artwork)).toBeNull();
  });
});
