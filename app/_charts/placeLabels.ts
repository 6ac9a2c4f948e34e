/** A few words that belong to a point of a drawing. */
export interface LabelToPlace {
  readonly key: string;
  readonly words: string;
  /** Of the point, px. */
  readonly x: number;
  readonly y: number;
  /** How far the words keep from it, px. */
  readonly away: number;
}

export interface PlacedLabel {
  readonly key: string;
  readonly words: string;
  readonly x: number;
  /** Of the line the letters stand on. */
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Mean advance of a letter and height of a line, as shares of the size they are written in. */
const ADVANCE = 0.54;
const LINE = 1.2;

type Side = 'leftUp' | 'up' | 'rightDown' | 'rightUp' | 'leftDown' | 'down';

/** Beside a line that rises words stand clear of it to the left above, or to the right beneath. */
const besideRising: readonly Side[] = ['leftUp', 'rightDown', 'up', 'down', 'rightUp', 'leftDown'];
const besideFalling: readonly Side[] = ['rightUp', 'leftDown', 'up', 'down', 'leftUp', 'rightDown'];

/**
 * Finds room for words beside their points, the first named first; words that find none are left out.
 *
 * @param within what they must not leave
 * @param taken boxes of what stands there already
 * @param sizePx of the letters
 */
export function placeLabels(
  labels: readonly LabelToPlace[],
  within: Box,
  taken: readonly Box[],
  sizePx: number,
  falls: boolean,
): readonly PlacedLabel[] {
  const boxes = [...taken];
  return labels.flatMap((label): readonly PlacedLabel[] => {
    for (const side of falls ? besideFalling : besideRising) {
      const box = boxAt(label, side, sizePx);
      const isIn =
        box.left >= within.left &&
        box.right <= within.right &&
        box.top >= within.top &&
        box.bottom <= within.bottom;
      if (!isIn || boxes.some((other) => overlap(box, other))) continue;
      boxes.push(box);
      const { key, words } = label;
      return [{ key, words, x: anchorX(box, side), y: box.bottom - 0.28 * sizePx, anchor: anchors[side] }];
    }
    return [];
  });
}

// Helpers

const anchors: Readonly<Record<Side, PlacedLabel['anchor']>> = {
  leftUp: 'end',
  leftDown: 'end',
  up: 'middle',
  down: 'middle',
  rightUp: 'start',
  rightDown: 'start',
};

function boxAt({ words, x, y, away }: LabelToPlace, side: Side, sizePx: number): Box {
  const width = words.length * sizePx * ADVANCE;
  const height = sizePx * LINE;
  const left =
    anchors[side] === 'end' ? x - away - width : anchors[side] === 'start' ? x + away : x - width / 2;
  const top = tops[side](y, away, height);
  return { left, right: left + width, top, bottom: top + height };
}

const tops: Readonly<Record<Side, (y: number, away: number, height: number) => number>> = {
  leftUp: (y, _, height) => y - height * 0.9,
  rightUp: (y, _, height) => y - height * 0.9,
  leftDown: (y) => y,
  rightDown: (y, away) => y + away * 0.35,
  up: (y, away, height) => y - away - height,
  down: (y, away) => y + away,
};

const anchorX = ({ left, right }: Box, side: Side): number =>
  anchors[side] === 'end' ? right : anchors[side] === 'start' ? left : (left + right) / 2;

const overlap = (one: Box, other: Box): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
