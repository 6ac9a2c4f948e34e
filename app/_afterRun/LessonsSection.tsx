import Link from 'next/link';
import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { OriginMark } from '@/app/_controls/OriginMark';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { MirrorNote } from '@/app/_runBook/MirrorNote';
import {
  type LessonNames,
  lessonName,
  lessonsAnswer,
  lessonTable,
  movedWords,
  paidWords,
} from '@/app/_words/afterRun/lessonWords';
import { blankName } from '@/app/_words/making/blankName';
import { goneNames } from '@/app/_words/making/goneNames';
import { positionWords } from '@/app/_words/workshop/blankWords';
import type { Lesson } from '@/lib/learning/lesson';
import { mirrorDoubts } from '@/lib/pressing/mirrorDoubts';
import styles from './AfterRun.module.css';
import { noteTakenOver } from './afterEntries';
import type { AfterRunOnScreen } from './afterRunOnScreen';
import { TakenOver } from './TakenOver';
import { useLessons } from './useLessons';

/** What was measured beside what was assumed; each is taken over when the maker says so, and taken back by one tap. */
export function LessonsSection({ on }: Readonly<{ on: AfterRunOnScreen }>) {
  const { workspace, figures, formatter } = on;
  const { facts, today, runs } = figures;
  const lessons = useLessons(on);
  const names = namesIn(workspace);
  const [left, setLeft] = useState(0);
  const { paid, moved, same } = lessons;
  const { key, after } = lessonsAnswer(lessons);
  const nameOf = ({ subject }: Pick<Lesson, 'subject'>) => lessonName(subject, names);
  const takeOver = (taken: readonly Lesson[], name: string) => {
    setLeft(0);
    noteTakenOver(workspace, taken, name, today);
  };
  return (
    <CardSection
      numeral={3}
      id="after-lessons"
      heading={lessonTable.heading}
      answer={
        <>
          <strong>{key}</strong>
          {after}
        </>
      }
    >
      <MirrorNote {...{ workspace, facts, today }} doubts={mirrorDoubts(runs)} />
      {paid.length + moved.length + same.length === 0 && <p>{lessonTable.nothing}</p>}
      <ul className={styles.lessons}>
        {paid.map((group) => {
          const [first] = group;
          if (first === undefined) return null;
          const name = nameOf(first);
          return (
            <li key={name} className={styles.changes}>
              <p>
                <strong>{name}.</strong> {paidWords(group, formatter)}
              </p>
              <Button
                kind="strong"
                spoken={`${lessonTable.take}: ${name}`}
                onPress={() => takeOver(group, name)}
              >
                {lessonTable.take}
              </Button>
            </li>
          );
        })}
        {moved.map((lesson) => (
          <li key={JSON.stringify(lesson.subject)} className={styles.lesson}>
            <p>
              <strong>{nameOf(lesson)}.</strong> {movedWords(lesson, formatter)}{' '}
              <OriginMark origin="measured" count={lesson.observations} />
            </p>
            {lesson.subject.of === 'ink' ? (
              <p className={styles.quiet}>
                {lessonTable.inkFrom} <Link href="/workshop#ink-record">{lessonTable.inkRecord}</Link>.
              </p>
            ) : lesson.places.length === 0 ? (
              <p className={styles.quiet}>
                {lesson.subject.of === 'sizeMix' ? lessonTable.noStall : lessonTable.onlyWatched}
              </p>
            ) : (
              <Button
                kind="quiet"
                spoken={`${lessonTable.take}: ${nameOf(lesson)}`}
                onPress={() => takeOver([lesson], nameOf(lesson))}
              >
                {lessonTable.take}
              </Button>
            )}
          </li>
        ))}
      </ul>
      <TakenOver {...{ workspace, formatter, names }} onLeft={setLeft} />
      <p role="status">
        {left > 0 &&
          `${formatter.count(left, 'place was', 'places were')} changed by hand since and stayed as typed.`}
      </p>
      {same.length > 0 && (
        <FoldRow
          place={`after ${facts.runId}`}
          folds={[
            {
              id: 'same',
              name: lessonTable.same(formatter.count(same.length, 'figure')),
              body: () => (
                <ul className={styles.plain}>
                  {same.map((lesson) => (
                    <li key={JSON.stringify(lesson.subject)}>
                      {nameOf(lesson)}: {movedWords(lesson, formatter)}
                    </li>
                  ))}
                </ul>
              ),
            },
          ]}
        />
      )}
    </CardSection>
  );
}

// Helpers

function namesIn({ workshop, blanks, papers }: ReadyWorkspace): LessonNames {
  return {
    blank: (id) => blankName(blanks, papers.runStandard, id),
    press: (id) => workshop.presses.find((press) => press.id === id)?.name ?? goneNames.press,
    sheet: (id) => workshop.sheets.find((sheet) => sheet.id === id)?.name ?? goneNames.sheet,
    place: (position) =>
      Object.entries(positionWords)
        .find(([name]) => name === position)?.[1]
        .toLowerCase() ?? position,
  };
}
