/** A few words that belong to a point of a drawing. */
interface LabelToPlace {
  readonly key: string;
  readonly words: string;
  /** Of the point, px. */
  readonly x: number;
  readonly y: number;
  /** How far the words keep from it, px. */
  readonly away: number;
  /** Whether they stand above it rather than beside it. */
  readonly isOver?: boolean;
}

export interface PlacedLabel {
  readonly key: string;
  readonly words: string;
  readonly x: number;
  /** Of the line the letters stand on. */
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

type Point = readonly [x: number, y: number];

/** What words must not lie on. */
interface Obstacles {
  readonly boxes: readonly Box[];
  /** Through points from left to right; words lie on them only where there is no other room. */
  readonly lines: readonly (readonly Point[])[];
}

/** Mean advance of a letter and height of a line, as shares of the size they are written in. */
const ADVANCE = 0.54;
const LINE = 1.2;
/** Half of a line as it is drawn, px. */
const HAIR = 1.5;

type Side = 'leftUp' | 'up' | 'rightDown' | 'rightUp' | 'leftDown' | 'down';

/** Beside a line that rises words stand clear of it to the left above, or to the right beneath. */
const besideRising: readonly Side[] = ['leftUp', 'rightDown', 'up', 'down', 'rightUp', 'leftDown'];
const besideFalling: readonly Side[] = ['rightUp', 'leftDown', 'up', 'down', 'leftUp', 'rightDown'];

const over: readonly Side[] = ['up'];

/**
 * Finds room for words beside their points, the first named first; words that find none are left out.
 *
 * @param within what they must not leave
 * @param sizePx of the letters
 */
export function placeLabels(
  labels: readonly LabelToPlace[],
  within: Box,
  obstacles: Obstacles,
  sizePx: number,
  falls: boolean,
): readonly PlacedLabel[] {
  const boxes = [...obstacles.boxes];
  const sides = falls ? besideFalling : besideRising;
  return labels.flatMap((label): readonly PlacedLabel[] => {
    const farther = { ...label, away: label.away + sizePx * LINE };
    const free = [label, farther]
      .flatMap((one) =>
        [...(one.isOver === true ? over : []), ...sides].map((side) => ({
          side,
          box: boxAt(one, side, sizePx),
        })),
      )
      .filter(({ box }) => isInside(box, within) && !boxes.some((other) => overlap(box, other)));
    const best = free.find(({ box }) => !obstacles.lines.some((line) => crosses(line, box))) ?? free[0];
    if (best === undefined) return [];
    const { side, box } = best;
    boxes.push(box);
    const { key, words } = label;
    return [{ key, words, x: anchorX(box, side), y: box.bottom - 0.28 * sizePx, anchor: anchors[side] }];
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
  leftUp: (y, _, height) => y - height - 2 * HAIR,
  rightUp: (y, _, height) => y - height - 2 * HAIR,
  leftDown: (y) => y,
  rightDown: (y, away) => y + away * 0.35,
  up: (y, away, height) => y - away - height,
  down: (y, away) => y + away,
};

const anchorX = ({ left, right }: Box, side: Side): number =>
  anchors[side] === 'end' ? right : anchors[side] === 'start' ? left : (left + right) / 2;

const overlap = (one: Box, other: Box): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

const isInside = (box: Box, within: Box): boolean =>
  box.left >= within.left &&
  box.right <= within.right &&
  box.top >= within.top &&
  box.bottom <= within.bottom;

/** Whether a line runs through a box or nearer to it than a hair. */
export const crosses = (line: readonly Point[], { left, right, top, bottom }: Box): boolean =>
  line.some(([toX, toY], at) => {
    const [fromX, fromY] = line[at - 1] ?? [toX, toY];
    if (toX < left || fromX > right) return false;
    const heightAt = (x: number) => fromY + ((x - fromX) / (toX - fromX)) * (toY - fromY);
    const ends =
      toX === fromX ? [fromY, toY] : [heightAt(Math.max(left, fromX)), heightAt(Math.min(right, toX))];
    return Math.min(...ends) < bottom + HAIR && Math.max(...ends) > top - HAIR;
  });
