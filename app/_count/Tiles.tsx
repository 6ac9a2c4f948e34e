'use client';

import { memo } from 'react';
import { classes } from '@/app/_controls/classes';
import type { DayCount } from '@/lib/stall/count/dayCount';
import { goodsKey } from '@/lib/stall/goodsKey';
import { Tile } from './Tile';
import styles from './Tiles.module.css';
import type { TileGoods, TileRow } from './tileRows';

type TilesProps = Readonly<{
  rows: readonly TileRow[];
  goods: DayCount['goods'];
  /** Of the goods that were tapped last; null where it was something else. */
  lastKey: string | null;
  onTap: (tile: TileGoods, left: number) => void;
  onMore: (tile: TileGoods) => void;
}>;

/** All goods in rows: sizes wrap, and the page scrolls down. */
export const Tiles = memo(function Tiles({ rows, goods, lastKey, onTap, onMore }: TilesProps) {
  const counts = new Map(goods.map((one) => [goodsKey(one), one]));
  return rows.map((row) => (
    <section key={row.id} aria-label={row.name} className={styles.row}>
      <div className={styles.head}>
        <h2 className={styles.name}>{row.name}</h2>
        <p className={styles.prices}>{row.prices}</p>
      </div>
      <div className={classes(styles.tiles, !row.hasSizes && styles.wide)}>
        {row.tiles.map((tile) => {
          const { left = 0, asked = 0 } = counts.get(tile.key) ?? {};
          return (
            <Tile key={tile.key} {...{ tile, left, asked, onTap, onMore }} isLast={tile.key === lastKey} />
          );
        })}
      </div>
    </section>
  ));
});
