'use client';

import { useMemo } from 'react';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import type { TextContext } from '@/app/_words/formatter';
import type { JobInput } from '@/shared/schemas/request';
import { SheetPaper } from './SheetPaper';
import { StoppedPage } from './StoppedPage';
import { type SheetAnswer, sheetSources } from './sheetSources';

type JobSheetProps = Readonly<{
  input: JobInput;
  answer: SheetAnswer;
  readFile: Workspace['readFile'];
  context: TextContext;
}>;

const { bench, owner } = jobSheetTable.files;

/** A job on paper: a sheet for the bench without a figure of money, and a second that is the owner’s. */
export function JobSheet({ input, answer, readFile, context }: JobSheetProps) {
  const sources = useMemo(() => sheetSources(input, answer, context), [input, answer, context]);
  if (sources === null) return <StoppedPage findings={answer.findings} context={context} />;
  const { words } = input.workshop.papers;
  return (
    <>
      <SheetPaper {...bench} {...{ words, readFile }} source={sources.bench} />
      <SheetPaper {...owner} {...{ words, readFile }} source={sources.owner} />
    </>
  );
}
