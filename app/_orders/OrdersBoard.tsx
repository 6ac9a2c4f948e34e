'use client';

import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { type RefObject, useEffect, useId, useMemo, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { Button } from '@/app/_controls/Button';
import { PageHead } from '@/app/_controls/PageHead';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { ClockBehind } from '@/app/_keeping/ClockBehind';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import { formatterFor } from '@/app/_words/formatter';
import { boardAnswer, boardLine } from '@/app/_words/orders/board/boardWords';
import { purses } from '@/lib/orders/board/purse';
import { lastPrintOn, todayList } from '@/lib/orders/board/todayList';
import { isOpen } from '@/lib/orders/board/turnOf';
import styles from './Board.module.css';
import { BoardFinder } from './BoardFinder';
import { piecesOfOrder } from './boardEntries';
import { EnquiryForm } from './EnquiryForm';
import { HitRates } from './HitRates';
import { laterParts } from './laterParts';
import { MoneyCard } from './MoneyCard';
import { OrderGroups } from './OrderGroups';
import type { Repeatable } from './RepeatPanel';
import { TodayCard } from './TodayCard';
import { useEnquiryDraft } from './useEnquiryDraft';
import { useFoundOrders } from './useFoundOrders';
import { useOrderActions } from './useOrderActions';

const TODAY_ROWS = 8;

/** Whose turn it is in every order, what today asks for, the money, and the weeks ahead. */
export function OrdersBoard({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const router = useRouter();
  const { workshop, blanks, entries } = workspace;
  const book = useOrderBook(workspace);
  const { board, today } = book;
  const enquiry = useEnquiryDraft();
  const findId = useId();
  const { actions, goneName } = useOrderActions(workspace, () => document.getElementById(findId)?.focus());
  const finding = useFoundOrders(board, workspace);
  const [todayShown, setTodayShown] = useState(TODAY_ROWS);
  const [inHead, atThumb] = [useRef<HTMLButtonElement>(null), useRef<HTMLButtonElement>(null)];
  const formatter = useMemo(() => formatterFor(workshop), [workshop]);
  const open = useMemo(() => board.filter(({ facts, standing }) => isOpen(facts, standing)), [board]);
  const money = useMemo(() => purses(board, today), [board, today]);
  const { idleDays } = workshop.quoting;
  const items = useMemo(
    () => todayList(board, { today, idleDays, lastPrintOn: lastPrintOn(entries.inkPrints, board) }),
    [board, today, idleDays, entries.inkPrints],
  );
  const latest = useRef<Repeatable | null>(null);
  const repeatable = { workspace, book, onRepeated: (id: string) => router.push(`/orders/${id}`) };
  useEffect(() => {
    latest.current = repeatable;
  });
  // The same for as long as the board stands, so that no row is drawn again for it.
  const [repeat] = useState(() => () => latest.current ?? repeatable);
  const count = (turn: 'you' | 'customer') => open.filter((order) => order.turn.turn === turn).length;
  const [first, rest] = boardAnswer({ you: count('you'), customer: count('customer') }, money, workshop);
  const { found, rows } = finding;
  const more = found.length - rows;
  const begin = (ref: RefObject<HTMLButtonElement | null>) => (
    <Button ref={ref} kind="strong" onPress={enquiry.open}>
      New enquiry
    </Button>
  );
  return (
    <>
      <PageHead
        title="Orders"
        line={boardLine(today, open.length, workshop)}
        aside={
          <span className={styles.headActs}>
            <Link href="/customers">Customers</Link>
            <span className={board.length > 0 ? styles.inHead : undefined}>{begin(inHead)}</span>
          </span>
        }
      />
      <ClockBehind clockBehind={workspace.clockBehind} />
      <RemovedNote what={goneName} how="put away" onUndo={() => void workspace.undo()} />
      <UnreadableRecords
        workspace={{
          ...workspace,
          unreadable: workspace.unreadable.filter(({ kind }) => kind === 'order' || kind === 'orderEvent'),
        }}
        level={2}
      />
      {enquiry.isOpen && (
        <EnquiryForm
          draft={enquiry.draft}
          asked={enquiry.asked}
          {...{ workspace, today }}
          onChange={enquiry.change}
          onNoted={(id) => {
            enquiry.forget();
            router.push(`/orders/${id}`);
          }}
          onClose={() => {
            // The buttons that open it are all there again then.
            flushSync(enquiry.close);
            inHead.current?.focus();
            // On a phone the one in the head is not there.
            if (document.activeElement !== inHead.current) atThumb.current?.focus();
          }}
          onEmpty={enquiry.forget}
        />
      )}
      {board.length === 0 ? (
        <p className={styles.empty}>
          No order yet. Note who asks and what they want: from then on this page says whose turn it is.
        </p>
      ) : (
        <div className={styles.board}>
          <TodayCard
            {...{ items, book, actions, workspace }}
            rows={todayShown}
            onMore={() => setTodayShown(items.length)}
          />
          <div className={styles.card}>
            <section aria-label="All orders">
              <p className={styles.answer}>
                <strong>{first}</strong>
                {rest}
              </p>
              <BoardFinder
                fieldId={findId}
                wanted={finding.wanted}
                found={found.length}
                elsewhere={finding.elsewhere}
                closedCount={board.length - open.length}
                onWanted={finding.look}
                formatter={formatter}
              />
              <OrderGroups
                {...{ found, rows, today, workshop, actions, repeat }}
                isClosed={finding.isClosed}
                piecesOf={(order) => piecesOfOrder(order, book, { blanks }, formatter)}
              />
              {more > 0 && (
                <div className={styles.more}>
                  <Button onPress={finding.showMore}>
                    Show {formatter.count(Math.min(more, finding.step), 'more order')}
                  </Button>
                </div>
              )}
            </section>
            {finding.isDrawn && (
              <>
                <LaterPart
                  part={laterParts.bench}
                  what="The hours at the bench"
                  props={{ workspace, book }}
                  before={<div className={styles.benchPlace} />}
                />
                <div className={styles.fold}>
                  <HitRates board={board} context={workshop} />
                </div>
              </>
            )}
          </div>
          {finding.isDrawn && money.length > 0 && <MoneyCard all={money} book={book} context={workshop} />}
        </div>
      )}
      {board.length > 0 && !enquiry.isOpen && (
        <div className={styles.thumb}>
          {begin(atThumb)}
          <Button onPress={() => document.getElementById(findId)?.focus()}>Find</Button>
        </div>
      )}
    </>
  );
}
