'use client';

import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { blankName } from '@/app/_words/making/blankName';
import { goneNames } from '@/app/_words/making/goneNames';
import { faultNames, nextMoveWords, ONE_AT_A_TIME } from '@/app/_words/press/faultWords';
import { missingWords, provesWords, stateWords } from '@/app/_words/press/logWords';
import { recipeAtPress } from '@/app/_words/press/recipeAtPress';
import { withCapital } from '@/app/_words/spelledNumber';
import type { RecipeLog } from '@/lib/pressing/recipeLogs';
import { testTrail } from '@/lib/pressing/testTrail';
import styles from './Log.module.css';
import { RunsAndAlarms } from './RunsAndAlarms';
import { TestList } from './TestList';
import { WashForm } from './WashForm';
import { WorthPart } from './WorthPart';

type RecipeCardProps = Readonly<{ workspace: ReadyWorkspace; log: RecipeLog }>;

/** One recipe on one blank in one press: how far it is, what that proves, and why. */
export function RecipeCard({ workspace, log }: RecipeCardProps) {
  const formatter = formatterFor(useTextContext());
  const { standing, recipe, pressed } = log;
  const id = `recipe-${log.tests.at(-1)?.id ?? log.pressed[0]?.id ?? log.washes.at(-1)?.id ?? 'none'}`;
  const blank = withCapital(blankName(workspace.blanks, workspace.papers.runStandard, log.blankId));
  const press = workspace.workshop.presses.find((one) => one.id === log.pressId)?.name ?? goneNames.press;
  const trail = testTrail(workspace.entries.pressTest, log);
  const newest = trail.at(-1);
  const next = newest !== undefined && newest.entry.id === log.tests[0]?.id ? newest.next : [];
  const lost = pressed.filter(({ body }) => body.result === 'scrap').length;
  return (
    <Card>
      <CardSection
        numeral={null}
        isFirst
        id={id}
        heading={`${blank}, ${press}`}
        answer={
          <>
            {recipeAtPress(recipe, formatter)}: <strong>{stateWords[standing.state]}</strong>.{' '}
            {provesWords(standing, formatter)}
          </>
        }
      >
        <ul className={styles.list}>
          {missingWords(standing).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        {next.map(({ fault, move }) => (
          <p key={fault} className={styles.next}>
            <strong>{faultNames[fault]}.</strong> {nextMoveWords(move)} {ONE_AT_A_TIME}
          </p>
        ))}
        <FoldRow
          place="press-log"
          folds={[
            {
              id: `${id}-tests`,
              name: formatter.count(log.tests.length, 'test'),
              body: () => <TestList {...{ log, trail, formatter }} readFile={workspace.readFile} />,
            },
            {
              id: `${id}-runs`,
              name: `${formatter.count(pressed.length, 'press')}, ${lost} lost`,
              body: () => <RunsAndAlarms {...{ log, formatter }} />,
            },
            {
              id: `${id}-washes`,
              name: formatter.count(log.washes.length, 'wash check'),
              body: () => (
                <>
                  <ul className={styles.list}>
                    {log.washes.map(({ id: washId, body }) => (
                      <li key={washId}>
                        {formatter.day(body.day)}: {formatter.count(body.cycles, 'wash')}, grade{' '}
                        {formatter.number(body.grade)}
                      </li>
                    ))}
                  </ul>
                  <WashForm {...{ workspace, log }} />
                </>
              ),
            },
            {
              id: `${id}-worth`,
              name: 'Is a test worth it',
              body: () => <WorthPart {...{ workspace, log }} />,
            },
          ]}
        />
        {log.lots.length > 0 && <p className={styles.quiet}>Lots, newest first: {log.lots.join(', ')}.</p>}
      </CardSection>
    </Card>
  );
}
