'use client';

import { useCallback, useMemo, useState } from 'react';
import { usePageName } from '@/app/_controls/usePageName';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import { useWakeLock } from '@/app/_tab/useWakeLock';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { DayClose } from '@/shared/schemas/stallPapers';
import styles from './Count.module.css';
import { CountFoot, type CountPanel } from './CountFoot';
import { CountHead } from './CountHead';
import { CountTold } from './CountTold';
import { laterParts } from './laterParts';
import { Sheet } from './Sheet';
import { Tiles } from './Tiles';
import { type ThumbSide, thumbSide } from './thumbSide';
import { type TileGoods, tileRows } from './tileRows';
import { type CountedPlans, useCount } from './useCount';
import { useWall } from './useWall';

type CountRoomProps = Readonly<{
  workspace: ReadyWorkspace;
  plans: CountedPlans;
  isOfSeveral: boolean;
  /** Null while the day is not closed. */
  close: DayClose | null;
  locale: string;
}>;

/** The whole count: how far the day is, the goods, and what the thumb needs. */
export function CountRoom({ workspace, plans, isOfSeveral, close: closed, locale }: CountRoomProps) {
  const counting = useCount(workspace, plans, locale);
  const { plan, beside, ticket, tap } = counting;
  const wall = useWall();
  const wake = useWakeLock();
  const rows = useMemo(() => tileRows(plan, beside, wall, locale), [plan, beside, wall, locale]);
  const [side, setSide] = useState<ThumbSide>(thumbSide.recall);
  const [panel, setPanel] = useState<CountPanel | null>(null);
  const [piece, setPiece] = useState<TileGoods | null>(null);
  const [isChoosing, setChoosing] = useState(false);
  usePageName(`${plan.title}: count`);
  const openPiece = useCallback((tile: TileGoods) => {
    setChoosing(false);
    setPiece(tile);
  }, []);
  const onTap = useCallback(
    (tile: TileGoods, left: number) => {
      if (isChoosing) openPiece(tile);
      else if (left > 0 || !tile.isPlanned)
        tap({ what: 'sale', goods: keyOf(tile), minor: tile.minor, pay: ticket.pay });
      else tap({ what: 'asked', goods: keyOf(tile), words: '' });
    },
    [isChoosing, openPiece, tap, ticket.pay],
  );
  const last = ticket.last?.body.tap;
  const close = () => setPanel(null);
  return (
    <div className={styles.count} data-stall-count="">
      <CountHead counting={counting} />
      <CountTold
        {...{ counting, wall, closed, isOfSeveral, isChoosing }}
        isTakenBack={plans.counts.withdrawn}
        onStop={() => setChoosing(false)}
      />
      <Tiles
        {...{ rows, onTap }}
        goods={counting.count.goods}
        lastKey={last?.what === 'sale' ? goodsKey(last.goods) : null}
        onMore={openPiece}
      />
      <CountFoot {...{ counting, rows, side }} onOpen={setPanel} />
      {panel === 'asked' && (
        <Sheet name="Asked for, not here" onClose={close}>
          <LaterPart part={laterParts.asked} what="What was asked for" props={{ counting, rows }} />
        </Sheet>
      )}
      {panel === 'more' && (
        <Sheet name="More" onClose={close}>
          <LaterPart
            part={laterParts.more}
            what="What else there is to tap"
            props={{
              counting,
              side,
              wake,
              onSide: (to: ThumbSide) => {
                thumbSide.remember(to);
                setSide(to);
              },
              onChoose: () => {
                close();
                setChoosing(true);
              },
            }}
          />
        </Sheet>
      )}
      {piece !== null && (
        <Sheet key={piece.key} name={piece.name} onClose={() => setPiece(null)}>
          <LaterPart
            part={laterParts.piece}
            what="What else can become of a piece"
            props={{ counting, rows, tile: piece, onDone: () => setPiece(null) }}
          />
        </Sheet>
      )}
    </div>
  );
}

// Helpers

/** The goods of a tile as an entry names them. */
const keyOf = ({ goods: { jobId, lineId, size } }: TileGoods) => ({ jobId, lineId, size });
