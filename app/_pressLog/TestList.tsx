import type { Formatter } from '@/app/_words/formatter';
import { faultNames } from '@/app/_words/press/faultWords';
import { changedWords, testPhotoWords, traitWords } from '@/app/_words/press/testWords';
import type { RecipeLog } from '@/lib/pressing/recipeLogs';
import { hasPassed, scoredTraits } from '@/lib/pressing/testScores';
import type { TestOfTrail } from '@/lib/pressing/testTrail';
import type { StoredFile } from '@/lib/stored/storedFile';
import styles from './Log.module.css';
import { TestPhoto } from './TestPhoto';

type TestListProps = Readonly<{
  log: RecipeLog;
  trail: readonly TestOfTrail[];
  formatter: Formatter;
  readFile: (id: string) => Promise<StoredFile | null>;
}>;

/** Tests, the newest first: what was changed, how it came out. */
export const TestList = ({ log, trail, formatter, readFile }: TestListProps) => (
  <ul className={styles.list}>
    {log.tests.map(({ id, body }) => (
      <li key={id}>
        <strong>
          {formatter.day(body.day)}: {hasPassed(body) ? 'good' : 'not good'}.
        </strong>{' '}
        {scoredTraits
          .flatMap((trait) =>
            body.scores[trait] === null ? [] : [`${traitWords[trait]} ${body.scores[trait]}`],
          )
          .join(', ')}
        {body.faults.length > 0 &&
          `; ${body.faults.map((fault) => faultNames[fault].toLowerCase()).join(', ')}`}
        {body.measuredC !== null && `; platen ${formatter.temperature(body.measuredC)}`}
        {body.coverage !== null && `; ink ${formatter.share(body.coverage)}`}
        {body.note !== '' && <bdi>; {body.note}</bdi>}
        <br />
        {changedWords(trail.find(({ entry }) => entry.id === id)?.changed ?? null)}
        {body.photo !== null && (
          <TestPhoto {...{ readFile }} photo={body.photo} says={testPhotoWords(formatter.day(body.day))} />
        )}
      </li>
    ))}
  </ul>
);
