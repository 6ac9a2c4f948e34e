import type { Blank, Position } from '@/shared/schemas/blank';
import styles from './PlaceDrawing.module.css';

type PlaceDrawingProps = Readonly<{
  kind: Blank['kind'] | undefined;
  position: Position;
  /** Of the item, across its chest or face; null where nobody measured. */
  itemWidthMm: number | null;
  widthMm: number;
  heightMm: number;
  dropFromCollarMm: number | null;
  /** Address of its picture, and whether that lies in the file as on the paper; null where none is kept. */
  picture: { readonly src: string; readonly isFlipped: boolean } | null;
  /** The drawing in words. */
  says: string;
}>;

/** Where a print sits on its item: the item in outline, the print in its proportion to it. */
export function PlaceDrawing(props: PlaceDrawingProps) {
  const { kind, position, picture, says } = props;
  const body = bodyOf(kind, position);
  const box = boxOn(body, props);
  return (
    <svg className={styles.drawing} viewBox="-2 -2 104 104" role="img" aria-label={says}>
      <path className={styles.item} d={body.outline} />
      {body.more !== '' && <path className={styles.seam} d={body.more} />}
      {picture !== null && (
        <image
          href={picture.src}
          {...box}
          transform={picture.isFlipped ? `translate(${2 * box.x + box.width} 0) scale(-1 1)` : undefined}
        />
      )}
      <rect className={picture === null ? styles.print : styles.edge} {...box} />
    </svg>
  );
}

// Helpers

/** An item on a ground of 100 × 100. */
interface Body {
  readonly outline: string;
  /** Seams and handles. */
  readonly more: string;
  /** Where its face begins and ends from side to side. */
  readonly left: number;
  readonly right: number;
  /** Where a print begins from above, and where the face ends. */
  readonly top: number;
  readonly bottom: number;
  /** Width of a common item of the kind, where its own is not known (common sizes). */
  readonly usualMm: number;
}

const square = (usualMm: number): Body => ({
  outline: 'M12 12H88V88H12Z',
  more: '',
  left: 12,
  right: 88,
  top: 12,
  bottom: 88,
  usualMm,
});

function bodyOf(kind: Blank['kind'] | undefined, position: Position): Body {
  switch (kind) {
    case 'garment':
      return {
        outline: 'M35 6L16 13L2 36L16 43L23 34V96H77V34L84 43L98 36L84 13L65 6C60 13 40 13 35 6Z',
        more: position === 'back' ? 'M35 6C42 9 58 9 65 6' : 'M35 6C38 18 62 18 65 6',
        left: 23,
        right: 77,
        top: position === 'back' ? 9 : 15,
        bottom: 96,
        usualMm: 510,
      };
    case 'bag':
      return {
        outline: 'M16 32H84V96H16Z',
        more: 'M34 32V14C34 4 66 4 66 14V32',
        left: 16,
        right: 84,
        top: 32,
        bottom: 96,
        usualMm: 380,
      };
    case 'drinkware':
      return {
        outline: 'M14 14H72V86C72 90 68 92 64 92H22C18 92 14 90 14 86Z',
        more: 'M72 28H82C92 28 96 38 96 52C96 66 92 74 82 74H72',
        left: 14,
        right: 72,
        top: 14,
        bottom: 92,
        usualMm: 82,
      };
    case 'cushion':
      return square(400);
    case 'mat':
      return square(240);
    case 'panel':
    case 'tile':
    case 'small':
    case undefined:
      return square(200);
    default:
      return kind satisfies never;
  }
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function boxOn(body: Body, props: PlaceDrawingProps): Box {
  const { position, itemWidthMm, widthMm, heightMm, dropFromCollarMm } = props;
  const face = body.right - body.left;
  // A print round the item is seen from its front: as wide as the face, and in its true proportion to it.
  const perMm = position === 'wrap' ? (face * 2.6) / widthMm : face / (itemWidthMm ?? body.usualMm);
  const width = Math.min(widthMm * perMm, face);
  const height = Math.min(heightMm * perMm, body.bottom - body.top);
  const at = placed(body, position, width, height);
  const y = dropFromCollarMm === null || isSleeve(position) ? at.y : body.top + dropFromCollarMm * perMm;
  return { x: at.x, y: Math.max(body.top, Math.min(y, body.bottom - height)), width, height };
}

const isSleeve = (position: Position): boolean => position === 'leftSleeve' || position === 'rightSleeve';

/** The wearer's left is on the right of the drawing. */
function placed(body: Body, position: Position, width: number, height: number): Pick<Box, 'x' | 'y'> {
  const middle = (body.left + body.right) / 2;
  const y = (body.top + body.bottom - height) / 2;
  switch (position) {
    case 'leftChest':
      return { x: (middle + body.right) / 2 - width / 2, y: body.top + 8 };
    case 'rightChest':
      return { x: (middle + body.left) / 2 - width / 2, y: body.top + 8 };
    case 'leftSleeve':
      return { x: Math.min(100 - width, 86 - width / 2), y: 24 };
    case 'rightSleeve':
      return { x: Math.max(0, 14 - width / 2), y: 24 };
    case 'front':
    case 'back':
    case 'wrap':
    case 'face':
      return { x: middle - width / 2, y };
    default:
      return position satisfies never;
  }
}
