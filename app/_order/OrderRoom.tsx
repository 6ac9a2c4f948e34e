'use client';

import { useCallback, useDeferredValue, useMemo, useState } from 'react';
import { Card } from '@/app/_controls/Card';
import { focusField } from '@/app/_controls/focusField';
import { RevealContext } from '@/app/_controls/reveal';
import { useGoToHash } from '@/app/_controls/useGoToHash';
import { ClockBehind } from '@/app/_keeping/ClockBehind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import { useLazy } from '@/app/_network/useLazy';
import { useBench } from '@/app/_orderBook/useBench';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import type { OrderPlace } from '@/app/_words/orders/orderPlaces';
import type { PaperTab } from '@/app/_words/orders/papers/paperTabWords';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { AskedFold } from './AskedFold';
import { BenchSection } from './bench/BenchSection';
import { laterParts } from './laterParts';
import { laterRest } from './laterRest';
import { MoneySection } from './money/MoneySection';
import { OrderHead } from './OrderHead';
import styles from './OrderRoom.module.css';
import { orderOnScreen } from './orderOnScreen';
import { StageTrack } from './StageTrack';
import { goToPapers } from './waits/goToPapers';
import { WaitsSection } from './waits/WaitsSection';

type OrderRoomProps = Readonly<{ workspace: ReadyWorkspace; book: OrderBook; found: BoardOrder }>;

/** One order on one screen: the track, then what it waits for, its money, its days; the papers beside. */
export function OrderRoom({ workspace, book, found }: OrderRoomProps) {
  useGoToHash();
  useForms();
  const bench = useBench(workspace, book);
  const [tab, setTab] = useState<PaperTab | null>(null);
  const [reveal, setReveal] = useState({ id: null as string | null, turn: 0 });
  const goTo = useCallback((id: OrderPlace) => {
    setReveal(({ turn }) => ({ id, turn: turn + 1 }));
    // The fold is open then.
    requestAnimationFrame(() => focusField(id));
  }, []);
  const on = orderOnScreen(workspace, found, book.today, bench.workOf);
  // A paper takes a while to draw: what was noted shows first.
  const [laterWorkspace, laterBook, laterBench] = [
    useDeferredValue(workspace),
    useDeferredValue(book),
    useDeferredValue(bench),
  ];
  const papers = useMemo(
    () => (
      <LaterPart
        part={laterParts.papers}
        what="The papers"
        id="order-papers"
        props={{
          workspace: laterWorkspace,
          book: laterBook,
          bench: laterBench,
          orderId: on.orderId,
          tab,
          onTab: setTab,
          onRoom: goTo,
        }}
      />
    ),
    [laterWorkspace, laterBook, laterBench, on.orderId, tab, goTo],
  );
  return (
    <>
      <OrderHead on={on} />
      <ClockBehind clockBehind={workspace.clockBehind} />
      <StageTrack on={on} />
      <RevealContext value={reveal}>
        <AskedFold on={on} />
      </RevealContext>
      <div className={styles.columns}>
        <div className={styles.now}>
          <Card>
            <WaitsSection
              {...{ on, bench }}
              onRoom={goTo}
              onPaper={(paper) => {
                setTab(paper);
                goToPapers();
              }}
            />
            <MoneySection on={on} />
            <BenchSection {...{ on, book, bench }} />
          </Card>
        </div>
        {papers}
        <div className={styles.more}>
          <LaterPart part={laterRest} what="Jobs, names and files" props={{ on, book, bench }} />
        </div>
      </div>
    </>
  );
}

// Helpers

/** Forms are here before they are asked for, so that a press opens one at once, without a network too. */
function useForms(): void {
  useLazy(laterParts.stepNote);
  useLazy(laterParts.override);
  useLazy(laterParts.payment);
  useLazy(laterParts.payout);
  useLazy(laterParts.expense);
}
