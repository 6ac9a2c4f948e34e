'use client';

import { memo, type ReactNode, useCallback, useState } from 'react';
import { Card } from '@/app/_controls/Card';
import { IndexSheetContext } from '@/app/_docket/common/indexSheet';
import { useInTurn } from '@/app/_docket/common/useInTurn';
import { useJob } from '@/app/_docket/common/useJob';
import { JobHead } from '@/app/_docket/head/JobHead';
import { JobPriceBar } from '@/app/_docket/head/JobPriceBar';
import { JobSection } from '@/app/_docket/job/JobSection';
import { JobSheetLink } from '@/app/_docket/jobSheet/JobSheetLink';
import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { IndexedSections } from '@/app/_sections/IndexedSections';
import { docketSections } from '@/app/_words/docket/docketSections';
import { DocketFailure } from './DocketFailure';
import styles from './DocketSections.module.css';
import { LazyFigureSections } from './LazyFigureSections';
import { SectionPlaces } from './SectionPlaces';
import { useArrival } from './useArrival';
import { useSectionStates } from './useSectionStates';

/** There is nothing to show in it before the first answer. */
const lazyChecksSection = lazy(() =>
  import('@/app/_docket/checks/ChecksSection').then(({ ChecksSection }) => ChecksSection),
);

/** The job, the checks, the figures. */
const PARTS = 3;

const LABEL = 'Sections of this job';

type DocketSectionsProps = Readonly<{
  /** Stands for the head until the sums are made; null where the head makes its own way. */
  sent: ReactNode;
}>;

/**
 * The docket of a job: its head, the price in sight, the index, and the sections on one slip. Drawn anew with its job
 * and not with whatever is around it.
 */
export const DocketSections = memo(function DocketSections({ sent }: DocketSectionsProps) {
  const { jobId, isChecked, failure, show } = useJob();
  const checks = useLazy(lazyChecksSection);
  const ChecksSection = checks.kind === 'here' ? checks.value : null;
  // Not before the first answer: the checks and the figures would push each other about while they fill.
  const drawn = useInTurn(isChecked ? PARTS : 1);
  const states = useSectionStates();
  useArrival(show);
  const [isSheetOpen, setSheetOpen] = useState(false);
  const openSheet = useCallback(() => setSheetOpen(true), []);
  return (
    <IndexSheetContext value={openSheet}>
      {sent ?? (
        <>
          <JobHead />
          {failure !== null && <DocketFailure failure={failure} />}
          <JobPriceBar />
        </>
      )}
      <IndexedSections
        label={LABEL}
        sections={docketSections}
        states={states}
        foot={<JobSheetLink className={styles.paper} jobId={jobId} />}
        isUnderBar
        isSheetOpen={isSheetOpen}
        onSheet={setSheetOpen}
      >
        <Card>
          {drawn > 0 ? <JobSection /> : <SectionPlaces of={['the-job']} />}
          {drawn > 1 && ChecksSection !== null && <ChecksSection />}
          {(drawn < 2 || checks.kind === 'coming') && <SectionPlaces of={['checks']} />}
          {drawn > 1 && checks.kind === 'missing' && (
            <PartMissing what="The part with the checks" missing={checks} />
          )}
          <LazyFigureSections isWanted={drawn > 2 && checks.kind !== 'coming'} />
        </Card>
      </IndexedSections>
    </IndexSheetContext>
  );
});
