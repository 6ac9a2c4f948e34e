'use client';

import { useCallback, useRef, useState } from 'react';
import { Card } from '@/app/_controls/Card';
import { IndexSheetContext } from '@/app/_docket/common/indexSheet';
import { useJob } from '@/app/_docket/common/useJob';
import { JobHead } from '@/app/_docket/head/JobHead';
import { JobPriceBar } from '@/app/_docket/head/JobPriceBar';
import { JobSection } from '@/app/_docket/job/JobSection';
import { JobSheetLink } from '@/app/_docket/jobSheet/JobSheetLink';
import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { DocketFailure } from './DocketFailure';
import styles from './DocketSections.module.css';
import { IndexSheet } from './IndexSheet';
import { LazyFigureSections } from './LazyFigureSections';
import { SectionIndex } from './SectionIndex';
import { useArrival } from './useArrival';
import { useCurrentSection } from './useCurrentSection';
import { useSectionStates } from './useSectionStates';

/** There is nothing to show in it before the first answer. */
const lazyChecksSection = lazy(() =>
  import('@/app/_docket/checks/ChecksSection').then(({ ChecksSection }) => ChecksSection),
);

/** The docket of a job: its head, the price in sight, the index, and the sections on one slip. */
export function DocketSections() {
  const { jobId, isChecked, failure, show } = useJob();
  const checks = useLazy(lazyChecksSection);
  const ChecksSection = checks.kind === 'here' ? checks.value : null;
  const content = useRef<HTMLDivElement>(null);
  const states = useSectionStates();
  const current = useCurrentSection(content);
  useArrival(content, show);
  const [isSheetOpen, setSheetOpen] = useState(false);
  const openSheet = useCallback(() => setSheetOpen(true), []);
  return (
    <IndexSheetContext value={openSheet}>
      <JobHead />
      {failure !== null && <DocketFailure failure={failure} />}
      <JobPriceBar />
      <div className={styles.frame}>
        <SectionIndex
          states={states}
          current={current}
          onOpenSheet={openSheet}
          foot={<JobSheetLink className={styles.paper} jobId={jobId} />}
        />
        <div className={styles.content} ref={content}>
          <Card>
            <JobSection />
            {/* Not before the first answer: they would push each other about while they fill. */}
            {isChecked && ChecksSection !== null && <ChecksSection />}
            {isChecked && checks.kind === 'missing' && (
              <PartMissing what="The part with the checks" missing={checks} />
            )}
            <LazyFigureSections isWanted={isChecked && checks.kind !== 'coming'} />
          </Card>
        </div>
      </div>
      <IndexSheet isOpen={isSheetOpen} onClose={() => setSheetOpen(false)} states={states} />
    </IndexSheetContext>
  );
}
