import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { overheadAnswer, overheadNote, quarterLines } from '@/app/_words/year/moneyWords';
import styles from './Year.module.css';
import type { YearSectionProps } from './yearSection';

/** Whether work carried what running the workshop cost, in the year and by quarter. */
export function OverheadSection({ on }: YearSectionProps) {
  const { standing, workspace, formatter, locale } = on;
  const { absorbedMinor, actualMinor } = standing.overhead;
  return (
    <CardSection
      numeral={6}
      heading="Overhead"
      id="year-overhead"
      answer={<Answer words={overheadAnswer(standing, locale)} />}
    >
      {(absorbedMinor !== 0 || actualMinor !== 0) && (
        <>
          <p className={styles.quiet}>
            {overheadNote(standing, workspace.workshop.policy.wearInOverhead, formatter)}
          </p>
          <FoldRow
            place="year"
            folds={[{ id: 'quarters', name: 'By quarter', body: () => <Quarters on={on} /> }]}
          />
        </>
      )}
    </CardSection>
  );
}

// Helpers

const Quarters = ({ on: { standing, workspace, locale } }: YearSectionProps) => (
  <>
    <table className={styles.quarters}>
      <caption className="visuallyHidden">Overhead by quarter, {standing.currency}</caption>
      <thead>
        <tr>
          <th scope="col">Quarter</th>
          <th scope="col">Carried</th>
          <th scope="col">Paid</th>
        </tr>
      </thead>
      <tbody>
        {quarterLines(standing, locale).map(({ name, carried, paid }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{carried}</td>
            <td>{paid}</td>
          </tr>
        ))}
      </tbody>
    </table>
    {workspace.workshop.policy.wearInOverhead && (
      <p className={styles.quiet}>Wear is of the whole year and stands in no quarter.</p>
    )}
  </>
);
