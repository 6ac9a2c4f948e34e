'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Advice } from '@/app/_controls/Advice';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { PageHead } from '@/app/_controls/PageHead';
import { usePageName } from '@/app/_controls/usePageName';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import { NextLikeIt } from '@/app/_stallBook/NextLikeIt';
import { notedBefore } from '@/app/_stallBook/notedBefore';
import styles from '@/app/_stallDay/DayWays.module.css';
import { linesNoted } from '@/app/_stallDay/head/linesNoted';
import { NotedLines } from '@/app/_stallDay/head/NotedLines';
import { amountWords } from '@/app/_words/amountWords';
import { formatterFor } from '@/app/_words/formatter';
import { closedNames, tapsSinceWords } from '@/app/_words/stall/closedWords';
import { notedNames } from '@/app/_words/stall/notedWords';
import { stallLineWords } from '@/app/_words/stall/stallHeadWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { DayPaper } from '@/lib/stall/closeInForce';
import { tapsSince } from '@/lib/stall/count/tapsSince';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { DayClose } from '@/shared/schemas/stallPapers';
import { ClosedPlan } from './ClosedPlan';
import { ClosedPlate } from './ClosedPlate';
import { laterParts } from './laterParts';

type ClosedDayProps = Readonly<{
  workspace: ReadyWorkspace;
  id: string;
  stallDay: StallDay;
  close: DayPaper<'dayClose', DayClose>;
  /** Told what undo calls it. */
  onRemoved: (label: string) => void;
}>;

/** A day that is closed: what came of it beside the plan that was fixed. Nothing of it is reckoned anew. */
export function ClosedDay({ workspace, id, stallDay, close: { body: close }, onRemoved }: ClosedDayProps) {
  usePageName(`${stallDay.name} · Pressminute`);
  const today = useToday();
  const locale = usableLocale(workspace.workshop.locale);
  const formatter = formatterFor({ ...workspace.workshop, currency: close.currency });
  const amount = (money: number) => amountWords(money, close.currency, locale);
  const plan = workspace.papers.stallPlan.find((one) => one.id === close.planId)?.body ?? null;
  const { stallTap } = workspace.entries;
  const since = useMemo(() => tapsSince(close, stallTap), [close, stallTap]);
  const noted = notedBefore(workspace.papers, id);
  const hasNoted = noted !== null && linesNoted(noted, formatter).length > 0;
  const told = { close, plan, amount, formatter, locale };
  const set = (label: string, path: readonly (string | number)[], value: unknown) =>
    void workspace.setField({ kind: 'stallDay', id }, label, path, value);
  return (
    <>
      <PageHead title={stallDay.name} line={`${stallLineWords(stallDay, today, locale)}, closed`} />
      {since !== 0 && <Advice severity="caution">{tapsSinceWords(since)}</Advice>}
      <ClosedPlate {...told} />
      <p className={styles.ways}>
        <ButtonLink kind="strong" href={`/stall/${id}/evening`}>
          {closedNames.evening}
        </ButtonLink>
        <NextLikeIt {...{ workspace, id, stallDay }} />
      </p>
      <Card>
        {hasNoted && (
          <CardSection numeral={1} id="closed-noted" heading={notedNames.next}>
            <NotedLines {...{ noted, formatter }} />
          </CardSection>
        )}
        <ClosedPlan {...told} today={today} numeral={hasNoted ? 2 : 1}>
          <FoldRow
            place={`${id} closed`}
            folds={[
              {
                id: 'stall-closed-late',
                name: closedNames.late,
                body: () => (
                  <LaterPart
                    part={laterParts.late}
                    what="The way in for a count"
                    props={{ part: { workspace, id, stallDay } }}
                  />
                ),
              },
              {
                id: 'stall-closed-note',
                name: closedNames.note,
                body: () => (
                  <LaterPart
                    part={laterParts.note}
                    what="The note"
                    props={{ on: { stallDay, set, workspace, id, today, formatter }, onRemoved }}
                  />
                ),
              },
            ]}
          />
        </ClosedPlan>
      </Card>
    </>
  );
}
