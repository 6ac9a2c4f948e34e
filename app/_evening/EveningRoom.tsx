'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { wallAt } from '@/app/_clock/wallAt';
import { Advice } from '@/app/_controls/Advice';
import { Card } from '@/app/_controls/Card';
import type { OrderForm } from '@/app/_fields/formMemory';
import { useTyped } from '@/app/_fields/useTyped';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import { formatterFor } from '@/app/_words/formatter';
import { beyondReachWords } from '@/app/_words/stall/evening/eveningWords';
import { takenBackWords } from '@/app/_words/stall/takenBackWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { sameValue } from '@/lib/merging/sameValue';
import { type FixedPlan, plansCountedBy, plansOf } from '@/lib/stall/car/plansOf';
import type { DayPaper } from '@/lib/stall/closeInForce';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import { tapsSince } from '@/lib/stall/count/tapsSince';
import { answersOfClose } from '@/lib/stall/evening/answersOfClose';
import { isBeyondReach } from '@/lib/stall/evening/beyondReach';
import { eveningAnswersSchema, noAnswers } from '@/lib/stall/evening/eveningAnswers';
import { pastDaysOf } from '@/lib/stall/evening/pastDaysOf';
import { reconcile } from '@/lib/stall/evening/reconcile';
import type { DayClose } from '@/shared/schemas/stallPapers';
import styles from './Evening.module.css';
import { EveningHead } from './EveningHead';
import type { EveningOnScreen } from './eveningOnScreen';
import { laterParts } from './laterParts';
import { CardSlip } from './slips/CardSlip';
import { CashSlip } from './slips/CashSlip';
import { DecideSlip } from './slips/DecideSlip';
import { ResultSlip } from './slips/ResultSlip';
import { StockSlip } from './slips/StockSlip';
import { TaxSlip } from './slips/TaxSlip';

type EveningRoomProps = Readonly<{
  workspace: ReadyWorkspace;
  fixed: FixedPlan;
  isOfSeveral: boolean;
  close: DayPaper<'dayClose', DayClose> | null;
}>;

/** Six slips, each with its answer; only what differs asks. */
export function EveningRoom(props: EveningRoomProps) {
  const on = useEvening(props);
  return (
    <>
      <EveningHead on={on} />
      {on.isBeyondReach && <Advice severity="stop">{beyondReachWords}</Advice>}
      {on.fixed.withdrawn && <Advice severity="caution">{takenBackWords}</Advice>}
      <Card>
        <CashSlip on={on} />
        <CardSlip on={on} />
        <StockSlip on={on} />
        <TaxSlip on={on} />
        <ResultSlip on={on} />
        <DecideSlip on={on} />
      </Card>
      <LaterPart
        part={laterParts.closing}
        what="What closes the day"
        props={{ on }}
        before={<div className={styles.closePlace} />}
      />
    </>
  );
}

// Helpers

function useEvening({ workspace, fixed, isOfSeveral, close }: EveningRoomProps): EveningOnScreen {
  const today = useToday();
  const plan = fixed.body;
  const { stallTap } = workspace.entries;
  const { stallPlan, dayClose } = workspace.papers;
  // What was typed before a close stays under it, so that undoing the close finds it again.
  const form: OrderForm = {
    orderId: plan.stallDayId,
    name: `evening ${close?.id ?? 'open'}`,
    isErased: false,
    // A quarter of an hour of counting, on a phone that may be put away or empty before the day is closed.
    outlivesTab: true,
  };
  const first = close === null ? noAnswers : answersOfClose(close.body);
  const [answers, setAnswers] = useTyped(form, 'answers', eveningAnswersSchema, first);
  const earlier = useMemo(
    () => plansOf(stallPlan, plan.stallDayId, plansCountedBy(stallTap, dayClose)).earlier,
    [plan, stallTap, stallPlan, dayClose],
  );
  const count = useMemo(() => foldTaps(plan, stallTap, wallAt, earlier), [plan, stallTap, earlier]);
  const isBeyond = useMemo(() => isBeyondReach(plan, count, answers), [plan, count, answers]);
  const evening = useMemo(
    () => reconcile(plan, count, isBeyond ? noAnswers : answers, wallAt, earlier),
    [plan, count, answers, isBeyond, earlier],
  );
  const tapsBefore = useMemo(
    () =>
      stallTap.filter(({ body }) => body.stallDayId === plan.stallDayId && body.planId !== fixed.id).length,
    [stallTap, plan, fixed],
  );
  const since = useMemo(() => (close === null ? 0 : tapsSince(close.body, stallTap)), [close, stallTap]);
  const past = useMemo(
    () =>
      pastDaysOf(stallPlan, dayClose).filter(
        (day) => day.stallDayId !== plan.stallDayId && day.currency === plan.currency,
      ),
    [stallPlan, dayClose, plan],
  );
  return {
    ...{ workspace, fixed, isOfSeveral, tapsBefore, close, evening, answers, form, past, today },
    tapsSince: since,
    isAsClosed: close !== null && since === 0 && close.body.planId === fixed.id && sameValue(answers, first),
    isBeyondReach: isBeyond,
    say: (more) => setAnswers({ ...answers, ...more }),
    locale: usableLocale(workspace.workshop.locale),
    formatter: formatterFor({ ...workspace.workshop, currency: plan.currency }),
  };
}
