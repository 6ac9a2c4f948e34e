import { Button } from '@/app/_controls/Button';
import { FoldRow } from '@/app/_controls/FoldRow';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { type LessonNames, lessonName, lessonTable } from '@/app/_words/afterRun/lessonWords';
import { takenWords } from '@/app/_words/afterRun/takenWords';
import type { Formatter } from '@/app/_words/formatter';
import { type TakenTogether, takenTogether } from '@/lib/learning/sortedLessons';
import { topmostTaken } from '@/lib/learning/topmostTaken';
import styles from './AfterRun.module.css';
import { noteTakenBack } from './afterEntries';

type TakenOverProps = Readonly<{
  workspace: ReadyWorkspace;
  formatter: Formatter;
  names: LessonNames;
  /** Told how many places were changed by hand since. */
  onLeft: (left: number) => void;
}>;

type Entry = ReadyWorkspace['entries']['rateTaken'][number];

/** So many of the newest stand open. */
const SHOWN = 4;

/** What was taken over, each taken back by one tap; those of long ago are folded away. */
export function TakenOver({ workspace, formatter, names, onLeft }: TakenOverProps) {
  const { rateTaken } = workspace.entries;
  const groups = takenTogether(rateTaken);
  // What lies under a later one is taken back after it.
  const topmost = new Set(topmostTaken(rateTaken));
  const list = (shown: readonly TakenTogether<Entry>[]) => (
    <ul className={styles.lessons}>
      {shown.map((entries) => {
        const [first, ...rest] = entries;
        const name = lessonName(first.body.subject, names);
        return (
          <li key={first.id} className={styles.taken}>
            <p>
              <strong>{name}.</strong> {takenWords([first.body, ...rest.map(({ body }) => body)], formatter)}
            </p>
            {entries.every((entry) => topmost.has(entry)) && (
              <Button
                kind="quiet"
                spoken={`${lessonTable.back}: ${name}`}
                onPress={() => onLeft(noteTakenBack(workspace, entries, name).left)}
              >
                {lessonTable.back}
              </Button>
            )}
          </li>
        );
      })}
    </ul>
  );
  const older = groups.slice(SHOWN);
  return (
    <>
      {groups.length > 0 && list(groups.slice(0, SHOWN))}
      {older.length > 0 && (
        <FoldRow
          place="lessons"
          folds={[{ id: 'taken', name: lessonTable.older(older.length), body: () => list(older) }]}
        />
      )}
    </>
  );
}
