'use client';

import type { ReactNode } from 'react';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { lazy } from '@/app/_network/lazy';
import { useLazy } from '@/app/_network/useLazy';
import styles from './PrintedJobSheet.module.css';
import { usePrinting } from './usePrinting';

/** Nobody prints in the first moments, so its code comes after that of the screen. */
const lazyJobSheet = lazy(() => import('./JobSheet').then(({ JobSheet }) => JobSheet));

/** Around a docket: on the screen it is the docket, on paper its job sheet. */
export function PrintedJobSheet({ children }: Readonly<{ children: ReactNode }>) {
  const { input, workspace, findings, costs, prices, isChecked } = useJob();
  const context = useTextContext();
  const isPrinting = usePrinting(input.job.name);
  const fetched = useLazy(lazyJobSheet);
  const JobSheet = fetched.kind === 'here' ? fetched.value : null;
  const isStopped = costs.stale || costs.answer === null;
  return (
    <>
      <div className={styles.screen}>{children}</div>
      <div className={styles.paper}>
        {JobSheet !== null && isChecked ? (
          <JobSheet
            input={input}
            answer={{
              findings,
              layout: isStopped ? null : (costs.answer?.layout ?? null),
              costSheet: isStopped ? null : (costs.answer?.costSheet ?? null),
              prices: prices.stale ? null : (prices.answer?.prices ?? null),
            }}
            readFile={workspace.readFile}
            isShown={isPrinting}
            context={context}
          />
        ) : (
          isPrinting && <p>The job sheet is still being made. Print it again in a moment.</p>
        )}
      </div>
    </>
  );
}
