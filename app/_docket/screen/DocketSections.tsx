'use client';

import { Card } from '@/app/_controls/Card';
import { ChecksSection } from '@/app/_docket/checks/ChecksSection';
import { useJob } from '@/app/_docket/common/useJob';
import { JobHead } from '@/app/_docket/head/JobHead';
import { JobPriceBar } from '@/app/_docket/head/JobPriceBar';
import { JobSection } from '@/app/_docket/job/JobSection';
import { DocketFailure } from './DocketFailure';
import { LazyFigureSections } from './LazyFigureSections';

/** The docket of a job: its head, the price in sight, and the sections on one slip. */
export function DocketSections() {
  const { isChecked, failure } = useJob();
  return (
    <>
      <JobHead />
      {failure !== null && <DocketFailure failure={failure} />}
      <JobPriceBar />
      <Card>
        <JobSection />
        {/* Not before the first answer: they would push each other about while they fill. */}
        {isChecked && <ChecksSection />}
        <LazyFigureSections isWanted={isChecked} />
      </Card>
    </>
  );
}
