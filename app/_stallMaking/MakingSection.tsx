'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { MakeIt } from '@/app/_makingFrame/MakeIt';
import { formatterFor } from '@/app/_words/formatter';
import { dayPressWords } from '@/app/_words/stall/dayLoadWords';
import { homeWords, leftInCarWords } from '@/app/_words/stall/homeWords';
import { keptWords, makingAnswer, makingLines, nameOfDay } from '@/app/_words/stall/makingWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import type { LeftInCar } from '@/lib/stall/car/carHeld';
import { dayPresses } from '@/lib/stall/car/dayLoads';
import type { BroughtAnswer } from '@/lib/stall/making/toPress';
import { daysInOrder } from '@/lib/stall/sellingDays';
import type { StallDay } from '@/shared/schemas/stallDay';
import { HomeCount } from './HomeCount';
import styles from './Making.module.css';
import { PressedActs } from './PressedActs';
import { PressRows } from './PressRows';
import { putIntoJobs } from './putIntoJobs';
import { seenMaking } from './seenMaking';
import { ToGet } from './ToGet';
import { useMaking } from './useMaking';

type MakingSectionProps = Readonly<{
  workspace: ReadyWorkspace;
  id: string;
  stallDay: StallDay;
  answer: BroughtAnswer;
  /** What closed days left in the car. */
  left: readonly LeftInCar[];
  numeral: number;
}>;

/** How long pressing takes and when it is done; the button that puts the numbers into their jobs; folded, the rest. */
export function MakingSection({ workspace, id, stallDay, answer, left, numeral }: MakingSectionProps) {
  const making = useMaking(workspace, { id, stallDay, answer });
  const formatter = formatterFor(workspace.workshop);
  const locale = usableLocale(workspace.workshop.locale);
  const seen = seenMaking(making, answer);
  const byDay =
    answer.kind !== 'planned' || seen.pieces === 0
      ? null
      : dayPressWords(
          daysInOrder(stallDay).map(({ day }) => day),
          dayPresses(answer.goods, stallDay.days),
          { today: making.today, locale },
        );
  const isOpen = making.jobs.some(({ isSet }) => !isSet);
  return (
    <CardSection
      numeral={numeral}
      heading="Making"
      id="making"
      answer={<Answer words={makingAnswer(seen, locale)} />}
    >
      <AnswerMissing what="What pressing takes could not be worked out" failure={making.failure} />
      <ul className={styles.lines}>
        {makingLines(seen, locale, formatter).map(({ words, isCaution }) => (
          <li key={words} className={isCaution ? styles.caution : undefined}>
            {words}
          </li>
        ))}
        {answer.kind === 'planned' &&
          leftInCarWords(left, answer.goods, formatter).map((words) => (
            <li key={words} className={styles.caution}>
              {words}
            </li>
          ))}
        {byDay !== null && <li>{byDay}</li>}
        {making.jobs.flatMap((job) => {
          const words = keptWords(job);
          return words === null ? [] : [<li key={job.designId}>{words}</li>];
        })}
      </ul>
      {making.jobs.length > 0 && (
        <div className={styles.acts}>
          {isOpen ? (
            <Button onPress={() => putIntoJobs(workspace, id, stallDay, making.jobs)}>
              Put them into the jobs
            </Button>
          ) : (
            <p className={styles.quiet}>
              The jobs have these numbers:{' '}
              {making.jobs.map(({ jobId, job }, at) => (
                <span key={jobId}>
                  {at > 0 && ', '}
                  <Link href={`/jobs/${jobId}`}>{nameOfDay(job.name, stallDay.name)}</Link>
                </span>
              ))}
            </p>
          )}
        </div>
      )}
      <PressedActs {...{ workspace, id, making, formatter }} dayName={stallDay.name} />
      {making.jobs.length > 0 && <MakeIt runs={workspace.runs} of={{ kind: 'day', id }} />}
      <FoldRow
        place={id}
        folds={[
          ...(making.jobs.length === 0
            ? []
            : [
                {
                  id: 'stall-making-pieces',
                  name: `${formatter.count(seen.pieces, 'piece')} by size`,
                  body: () => <PressRows {...{ workspace, making, formatter }} />,
                },
                {
                  id: 'stall-making-get',
                  name: 'Paper, ink and blanks',
                  body: () => <ToGet {...{ workspace, making, formatter, locale }} />,
                },
              ]),
          ...(answer.kind === 'planned'
            ? [
                {
                  id: 'stall-making-home',
                  fieldId: 'stall-atHome',
                  holds: ['stall-atHome'],
                  name: homeWords.label,
                  body: () => (
                    <HomeCount {...{ workspace, formatter }} goods={answer.goods} ranges={stallDay.ranges} />
                  ),
                },
              ]
            : []),
        ]}
      />
    </CardSection>
  );
}
