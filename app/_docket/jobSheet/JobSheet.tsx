import { useMemo } from 'react';
import { classes } from '@/app/_controls/classes';
import { useArtworkPreviews } from '@/app/_docket/common/useArtworkPreviews';
import type { Workspace } from '@/app/_documents/useWorkspace';
import type { TextContext } from '@/app/_words/formatter';
import type { JobAnswer } from '@/lib/costing/priceJob';
import { jobSheetFacts } from '@/lib/jobSheet/jobSheet';
import type { JobInput } from '@/shared/schemas/request';
import { BenchPage } from './BenchPage';
import styles from './JobSheet.module.css';
import { OwnerPage } from './OwnerPage';
import { StoppedPage } from './StoppedPage';

type JobSheetProps = Readonly<{
  input: JobInput;
  answer: Pick<JobAnswer, 'findings' | 'layout' | 'costSheet' | 'prices'>;
  readFile: Workspace['readFile'];
  /** False while nobody looks: then only its pictures are fetched, for a print waits for nothing. */
  isShown?: boolean;
  context: TextContext;
}>;

/** A job on paper: one page for the bench without a figure of money, and a second that is the owner’s. */
export function JobSheet({ input, answer, readFile, isShown = true, context }: JobSheetProps) {
  const previews = useArtworkPreviews(input, { readFile });
  const { findings, layout, costSheet, prices } = answer;
  const facts = useMemo(
    () =>
      !isShown || layout === null || costSheet === null ? null : jobSheetFacts(input, { layout, costSheet }),
    [isShown, input, layout, costSheet],
  );
  if (!isShown) return null;
  if (facts === null || costSheet === null)
    return (
      <article className={styles.page} aria-label="Job sheet">
        <StoppedPage input={input} findings={findings} context={context} />
      </article>
    );
  return (
    <>
      <article className={styles.page} aria-label="Job sheet">
        <BenchPage {...{ input, facts, findings, previews, context }} />
      </article>
      <article className={classes(styles.page, styles.owner)} aria-label="For you alone">
        <OwnerPage {...{ input, costSheet, prices, context }} />
      </article>
    </>
  );
}
