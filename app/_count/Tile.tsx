'use client';

import { memo } from 'react';
import { classes } from '@/app/_controls/classes';
import { besideLeftWords, besideMark, tileMark, tileSpoken } from '@/app/_words/stall/count/countWords';
import styles from './Tiles.module.css';
import type { TileGoods } from './tileRows';
import { useLongPress } from './useLongPress';

type TileProps = Readonly<{
  tile: TileGoods;
  left: number;
  asked: number;
  /** It was tapped last. */
  isLast: boolean;
  onTap: (tile: TileGoods, left: number) => void;
  onMore: (tile: TileGoods) => void;
}>;

/** One of the goods: a tap sells it, a long press offers what else can become of it. Drawn anew only where it changed. */
export const Tile = memo(function Tile({ tile, left, asked, isLast, onTap, onMore }: TileProps) {
  const press = useLongPress(
    () => onTap(tile, left),
    () => onMore(tile),
  );
  const isGone = left <= 0 && tile.isPlanned;
  const { over, mark } = tile.isPlanned ? tileMark(left, asked) : { over: '', mark: besideMark(left) };
  return (
    <button
      {...press}
      type="button"
      className={classes(styles.tile, isLast && styles.last, isGone && styles.gone)}
      aria-label={
        tile.isPlanned
          ? tileSpoken(tile.name, { left, asked, price: tile.price })
          : `${tile.name}, ${tile.price}, ${besideLeftWords(left)}`
      }
    >
      <span className={classes(styles.label, tile.label.length > 4 && styles.long)}>{tile.label}</span>
      <span className={classes(styles.left, left === 1 && styles.few)}>
        {over !== '' && <span className={styles.over}>{over}</span>}
        {mark}
      </span>
    </button>
  );
});
