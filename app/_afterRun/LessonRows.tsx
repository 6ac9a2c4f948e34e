import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { type LessonNames, lessonName, lessonWords } from '@/app/_words/afterRun/afterRunWords';
import type { Formatter } from '@/app/_words/formatter';
import { positionWords } from '@/app/_words/workshop/blankWords';
import type { Lesson } from '@/lib/learning/lesson';
import { topmostTaken } from '@/lib/learning/topmostTaken';
import styles from './AfterRun.module.css';
import { noteTakenBack, noteTakenOver } from './afterEntries';

type LessonRowsProps = Readonly<{
  workspace: ReadyWorkspace;
  lessons: readonly Lesson[];
  today: string;
  formatter: Formatter;
  /** Badges that came out the wrong way round. */
  reversed: number;
}>;

/** What was measured beside what was assumed; each is taken over when the maker says so, and taken back by one tap. */
export function LessonRows({ workspace, lessons, today, formatter, reversed }: LessonRowsProps) {
  const [left, setLeft] = useState(0);
  const names = namesIn(workspace);
  const nameOf = ({ subject }: Pick<Lesson, 'subject'>) => lessonName({ subject }, names);
  const topmost = topmostTaken(workspace.entries.rateTaken);
  return (
    <>
      {reversed > 0 && (
        <p className={styles.lesson}>
          <strong>{formatter.count(reversed, 'print')} came out reversed.</strong> Check the mirror before the
          next print, or more will be lost the same way.
        </p>
      )}
      {lessons.length === 0 && <p>Nothing yet: note pieces, times and what things cost.</p>}
      <ul className={styles.lessons}>
        {lessons.map((lesson) => (
          <li key={JSON.stringify(lesson.subject)} className={styles.lesson}>
            <strong>{nameOf(lesson)}.</strong> {lessonWords(lesson, formatter)}
            {lesson.places.length === 0 ? (
              <span className={styles.quiet}> Nothing to change.</span>
            ) : (
              <Button
                spoken={`Take it over: ${nameOf(lesson)}`}
                onPress={() => void noteTakenOver(workspace, lesson, nameOf(lesson), today)}
              >
                Take it over
              </Button>
            )}
          </li>
        ))}
      </ul>
      {workspace.entries.rateTaken.length > 0 && (
        <>
          <h3>Taken over</h3>
          <ul className={styles.lessons}>
            {workspace.entries.rateTaken.map((entry) => (
              <li key={entry.id} className={styles.lesson}>
                {`${formatter.day(entry.body.day)}: ${nameOf(entry.body)}, in ${formatter.count(entry.body.places.length, 'place')}.`}
                {topmost.includes(entry) && (
                  <Button
                    kind="quiet"
                    spoken={`Take back: ${nameOf(entry.body)}`}
                    onPress={() => setLeft(noteTakenBack(workspace, entry, nameOf(entry.body)).left)}
                  >
                    Take back
                  </Button>
                )}
              </li>
            ))}
          </ul>
        </>
      )}
      <p role="status">
        {left > 0 &&
          `${formatter.count(left, 'place was', 'places were')} changed by hand since and stayed as typed.`}
      </p>
    </>
  );
}

// Helpers

function namesIn({ workshop, blanks }: ReadyWorkspace): LessonNames {
  return {
    blank: (id) => blanks[id]?.name ?? 'a blank no longer here',
    press: (id) => workshop.presses.find((press) => press.id === id)?.name ?? 'a press no longer here',
    sheet: (id) => workshop.sheets.find((sheet) => sheet.id === id)?.name ?? 'a paper no longer here',
    place: (position) =>
      Object.entries(positionWords)
        .find(([name]) => name === position)?.[1]
        .toLowerCase() ?? position,
  };
}
