import Link from 'next/link';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import {
  designFigure,
  designNote,
  fairFigure,
  fairsNote,
  resultsAnswer,
} from '@/app/_words/year/resultWords';
import type { DesignResult } from '@/lib/year/designResults';
import styles from './Year.module.css';
import type { YearSection, YearSectionProps } from './yearSection';

/** Which designs and which fairs were worth it, the best first. */
export function ResultsSection({ on }: YearSectionProps) {
  const { standing } = on;
  const { designs, fairs } = standing;
  return (
    <CardSection
      numeral={8}
      heading="Designs and fairs"
      id="year-results"
      answer={<Answer words={resultsAnswer(standing, (design) => nameOf(design, on))} />}
    >
      {designs.length + fairs.length > 0 && (
        <FoldRow
          place="year"
          folds={[
            ...(designs.length === 0
              ? []
              : [{ id: 'designs', name: 'Designs', body: () => <Designs on={on} /> }]),
            ...(fairs.length === 0 ? [] : [{ id: 'fairs', name: 'Fairs', body: () => <Fairs on={on} /> }]),
          ]}
        />
      )}
    </CardSection>
  );
}

// Helpers

function Designs({ on }: YearSectionProps) {
  return (
    <>
      <ol className={styles.ranks}>
        {on.standing.designs.map((design) => (
          <li key={`${design.jobId} ${design.lineId}`} className={styles.rank}>
            <bdi>{nameOf(design, on)}</bdi>
            <span className={styles.figure}>{designFigure(design, on.formatter)}</span>
          </li>
        ))}
      </ol>
      <p className={styles.quiet}>{designNote}</p>
    </>
  );
}

function Fairs({ on }: YearSectionProps) {
  const { standing, today, locale } = on;
  return (
    <>
      <ol className={styles.ranks}>
        {standing.fairs.map((fair) => (
          <li key={fair.stallDayId} className={styles.rank}>
            <span>
              <Link href={`/stall/${fair.stallDayId}/evening`}>
                <bdi>{fair.title}</bdi>
              </Link>
              , {shortDay(fair.day, today, locale)}
            </span>
            <span className={styles.figure}>{fairFigure(fair, locale)}</span>
          </li>
        ))}
      </ol>
      <p className={styles.quiet}>{fairsNote}</p>
    </>
  );
}

/** As its line is called now, else as its last paper called it. */
const nameOf = ({ jobId, lineId, name }: DesignResult, { book }: YearSection): string =>
  book.jobOf(jobId)?.job.lines.find(({ id }) => id === lineId)?.name || name || 'A design that is gone';
