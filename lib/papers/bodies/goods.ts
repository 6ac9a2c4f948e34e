import type { Drawing, DrawnGoods, DrawnPrint, Note } from '@/lib/papers/paper';
import type { LabelKey } from '@/lib/papers/words/englishLabels';
import { apart, filled } from '@/lib/papers/words/labelsFor';
import type { GoodsOnPaper } from '@/shared/schemas/paperParts';
import { oneLine, type Told } from './heading';

type Print = GoodsOnPaper['prints'][number];

interface Size {
  readonly size: string;
  readonly quantity: number;
}

/** @returns goods drawn, and told beside: how many, of what, in which sizes, with which prints. */
export function drawnGoods(
  goods: GoodsOnPaper & { readonly sizes: readonly Size[] },
  told: Told,
  withVersions: boolean,
): DrawnGoods {
  const { labels, figures } = told;
  const sizes = eachOnce(goods.sizes);
  const count = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
  return {
    drawings: drawingsOf(goods, told),
    heading: filled(labels.heading, { count: figures.count(count), name: apart(goods.name) }),
    lines: [
      oneLine(goods.says),
      filled(labels.sizes, {
        sizes: sizes.map(({ size, quantity }) => `${apart(size)} ${figures.count(quantity)}`).join(', '),
      }),
    ].filter((line) => line !== ''),
    prints: goods.prints.map((print) => ({
      ...printNote(print, told, withVersions),
      ...markOf(print, goods.prints),
    })),
  };
}

/** @returns sizes that have pieces, each once with all of them, where several prices give it several rows. */
function eachOnce(sizes: readonly Size[]): readonly Size[] {
  const counts = new Map<string, number>();
  for (const { size, quantity } of sizes)
    if (quantity > 0) counts.set(size, (counts.get(size) ?? 0) + quantity);
  return [...counts].map(([size, quantity]) => ({ size, quantity }));
}

const sides: Readonly<Record<Print['position'], LabelKey>> = {
  front: 'sideFront',
  back: 'sideBack',
  leftChest: 'sideLeftChest',
  rightChest: 'sideRightChest',
  leftSleeve: 'sideLeftSleeve',
  rightSleeve: 'sideRightSleeve',
  wrap: 'sideWrap',
  face: 'sideFace',
};

function printNote(print: Print, { labels, figures }: Told, withVersions: boolean): Note {
  const size = figures.size(print.widthMm, print.heightMm);
  const placed =
    print.dropFromCollarMm === null
      ? size
      : filled(labels.belowCollar, { size, drop: figures.length(print.dropFromCollarMm) });
  const { artwork } = print;
  const picture = withVersions
    ? filled(labels.pictureVersion, { name: apart(artwork.name), version: artwork.version })
    : apart(artwork.name);
  const onSizes =
    print.sizes === null
      ? placed
      : filled(labels.onSizes, { text: placed, sizes: print.sizes.map(apart).join(', ') });
  return {
    lead: filled(labels.print, { side: labels[sides[print.position]], picture }),
    // Who approves it has to know; a price says nothing of how it looks.
    text: withVersions && print.picture === null ? `${onSizes}; ${labels.noPicture}` : onSizes,
  };
}

/** @returns the number of a print's place; one place alone cannot be taken for another. */
function markOf({ placementId }: Print, prints: readonly Print[]): Pick<DrawnPrint, 'mark'> {
  const places = [...new Set(prints.map((print) => print.placementId))];
  return places.length > 1 ? { mark: String(places.indexOf(placementId) + 1) } : {};
}

/** @returns the sides of a piece with their prints. */
export function drawingsOf(
  { shape, prints }: Pick<GoodsOnPaper, 'shape' | 'prints'>,
  { labels, figures }: Told,
): readonly Drawing[] {
  // Of a print with several sizes the first is drawn; all are told.
  const shown = prints.filter(
    ({ placementId }, at) => prints.findIndex((other) => other.placementId === placementId) === at,
  );
  const drawn = (print: Print): DrawnPrint => ({
    name: print.artwork.name,
    ...markOf(print, prints),
    size: figures.size(print.widthMm, print.heightMm),
    position: placeOf(print.position),
    widthMm: print.widthMm,
    heightMm: print.heightMm,
    dropMm: print.dropFromCollarMm,
    picture: print.picture?.fileId ?? null,
  });
  switch (shape) {
    case 'garment': {
      const back = shown.filter(({ position }) => position === 'back').map(drawn);
      const front = shown.filter(({ position }) => position !== 'back').map(drawn);
      return [
        ...(back.length > 0 ? [{ shape: 'back', caption: labels.back, prints: back } as const] : []),
        ...(front.length > 0 ? [{ shape: 'front', caption: labels.front, prints: front } as const] : []),
      ];
    }
    case 'mug':
    case 'panel':
    case 'other':
      return shown.map((print) => ({
        shape,
        caption: shape === 'mug' ? labels.flat : print.name,
        prints: [drawn(print)],
      }));
    default:
      return shape satisfies never;
  }
}

function placeOf(position: Print['position']): DrawnPrint['position'] {
  switch (position) {
    case 'leftChest':
    case 'rightChest':
    case 'leftSleeve':
    case 'rightSleeve':
      return position;
    case 'front':
    case 'back':
    case 'wrap':
    case 'face':
      return 'middle';
    default:
      return position satisfies never;
  }
}
