'use client';

import { useCallback, useEffect, useMemo, useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import { PageHead } from '@/app/_controls/PageHead';
import { RevealContext } from '@/app/_controls/reveal';
import { useHash } from '@/app/_controls/useHash';
import { usePageName } from '@/app/_controls/usePageName';
import { EditableTitle } from '@/app/_fields/EditableTitle';
import { ClockBehind } from '@/app/_keeping/ClockBehind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import { goToSection } from '@/app/_sections/goToSection';
import { IndexedSections } from '@/app/_sections/IndexedSections';
import { useReveal } from '@/app/_sections/useReveal';
import { notedBefore } from '@/app/_stallBook/notedBefore';
import { stallAsked } from '@/app/_stallBook/stallAsked';
import { useStallBefore } from '@/app/_stallBook/useStallBefore';
import { amountWords } from '@/app/_words/amountWords';
import { formatterFor } from '@/app/_words/formatter';
import { stallLineWords } from '@/app/_words/stall/stallHeadWords';
import { makingWaits, stallSections } from '@/app/_words/stall/stallSections';
import { stallStates } from '@/app/_words/stall/stallStates';
import { usableLocale } from '@/app/_words/usableLocale';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { plansCountedBy, plansOf } from '@/lib/stall/car/plansOf';
import { closeInForce } from '@/lib/stall/closeInForce';
import { bringGrid } from '@/lib/stall/plan/bringGrid';
import { textLimits } from '@/shared/limits';
import { type StallDay, stallDaySchema } from '@/shared/schemas/stallDay';
import { BringSection } from './bring/BringSection';
import { DayWays } from './DayWays';
import { DaySection } from './day/DaySection';
import { PlanActs } from './head/PlanActs';
import { PlanBar } from './head/PlanBar';
import { StallPlate } from './head/StallPlate';
import { laterParts } from './laterParts';
import type { StallOnScreen } from './stallOnScreen';
import { StaySection } from './stay/StaySection';
import { useStallFigures } from './useStallFigures';
import { WeatherSection } from './weather/WeatherSection';

type StallDocketProps = Readonly<{
  workspace: ReadyWorkspace;
  id: string;
  stallDay: StallDay;
  /** Told what undo calls it. */
  onRemoved: (label: string) => void;
}>;

const LABEL = 'Sections of this stall day';

/** The plan of a stall day from top to bottom: what it comes to, then the day, the goods, the weather, go or stay. */
export function StallDocket({ workspace, id, stallDay, onRemoved }: StallDocketProps) {
  usePageName(`${stallDay.name} · Pressminute`);
  const { reveal, show } = useReveal('stall-');
  const on = useStallOnScreen({ workspace, id, stallDay }, show);
  const [isSheetOpen, setSheetOpen] = useState(false);
  const hash = useHash();
  useEffect(() => {
    const isSection = stallSections.some((section) => section.id === hash);
    return isSection ? goToSection(hash) : undefined;
  }, [hash]);
  const { workshop, papers, entries } = workspace;
  const { plan, grid, before, locale, formatter } = on;
  const { counts } = plansOf(papers.stallPlan, id, plansCountedBy(entries.stallTap, papers.dayClose));
  const fixedOn = counts?.body.issuedOn ?? null;
  const states = useMemo(
    () => stallStates({ stallDay, workshop, plan, grid, fixedOn, locale, formatter }),
    [stallDay, workshop, plan, grid, fixedOn, locale, formatter],
  );
  return (
    <RevealContext value={reveal}>
      <PageHead
        title={
          <EditableTitle
            value={stallDay.name}
            label="Name of the stall day"
            limits={textLimits(stallDaySchema, ['name'])}
            onCommit={(name) => on.set('Name of the stall day', ['name'], name)}
          />
        }
        line={stallLineWords(stallDay, on.today, locale)}
      />
      <ClockBehind clockBehind={workspace.clockBehind} />
      <AnswerMissing what="The plan could not be worked out" failure={on.failure} />
      <StallPlate on={on} />
      <DayWays {...{ workspace, id }} />
      {on.noted !== null && (
        <LaterPart part={laterParts.noted} what="What was noted" props={{ noted: on.noted, formatter }} />
      )}
      {on.troubles.length > 0 && (
        <LaterPart part={laterParts.troubles} what="What the plan asks" props={{ on }} />
      )}
      <IndexedSections
        label={LABEL}
        sections={stallSections}
        states={states}
        foot={plan !== null && <PlanActs isFixed={counts !== null} show={show} />}
        isUnderBar={false}
        isSheetOpen={isSheetOpen}
        onSheet={setSheetOpen}
      >
        <Card>
          <DaySection on={on} numeral={1} onRemoved={onRemoved} />
          <BringSection on={on} numeral={2} />
          <WeatherSection on={on} numeral={3} />
          <StaySection on={on} numeral={4} />
          <LaterPart
            part={laterParts.prices}
            what="The prices"
            props={{ workspace, id, stallDay, answer: plan, numeral: 5 }}
          />
          {plan === null ? (
            <CardSection numeral={6} id="making" heading="Making">
              <p>{makingWaits}</p>
            </CardSection>
          ) : (
            <LaterPart
              part={laterParts.making}
              what="What is to be pressed"
              props={{ workspace, id, stallDay, answer: plan, left: before.left, numeral: 6 }}
            />
          )}
          <LaterPart
            part={laterParts.car}
            what="Car and tin"
            props={{
              ...{ workspace, id, stallDay, answer: plan, left: before.left },
              ...{ isOld: on.isOld, today: on.today, numeral: 7 },
            }}
          />
        </Card>
      </IndexedSections>
      <PlanBar
        on={on}
        isFixed={counts !== null}
        isClosed={closeInForce(workspace.papers.dayClose, id) !== null}
      />
    </RevealContext>
  );
}

// Helpers

type ShownDay = Omit<StallDocketProps, 'onRemoved'>;

function useStallOnScreen({ workspace, id, stallDay }: ShownDay, show: StallOnScreen['show']): StallOnScreen {
  const today = useToday();
  const { workshop, papers } = workspace;
  const before = useStallBefore(workspace, id);
  const figures = useStallFigures(stallAsked(workspace, stallDay, today, before));
  const goods = figures.plan?.goods;
  const grid = useMemo(() => bringGrid(stallDay, goods ?? []), [stallDay, goods]);
  const { likeId } = stallDay;
  const noted = useMemo(() => (likeId === undefined ? null : notedBefore(papers, likeId)), [papers, likeId]);
  const locale = usableLocale(workshop.locale);
  const { currency } = workshop;
  const formatter = useMemo(() => formatterFor(workshop), [workshop]);
  const amount = useCallback((money: number) => amountWords(money, currency, locale), [currency, locale]);
  return {
    ...figures,
    ...{ workspace, id, stallDay, today, before, grid, noted, locale, formatter, amount, show },
    reader: { locale, currency },
    set: (label, path, value) => void workspace.setField({ kind: 'stallDay', id }, label, path, value),
    change: (label, to, key) => void workspace.changeStallDay(id, label, to, key),
  };
}
