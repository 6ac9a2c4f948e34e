'use client';

import { createContext, useContext } from 'react';
import type { Workspace } from '@/app/_documents/useWorkspace';
import type { WorkspaceActions } from '@/app/_documents/workspaceActions';
import type { WorkerFailure } from '@/app/_network/workerFailure';
import type { FigureNames } from '@/app/_trace/figureName';
import type { Question } from '@/lib/check/questions/question';
import type { JobAnswer } from '@/lib/costing/priceJob';
import type { SharedLook } from '@/lib/layout/layoutSearch';
import type { Finding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import type { FieldPath } from '@/shared/setIn';
import type { FieldNotes } from './fieldNotes';

/** What a field of the docket is given besides its value. */
export interface EditableField extends FieldNotes {
  readonly label: string;
  readonly id: string;
  readonly onCommit: (value: unknown) => void;
}

/** How the fields of the job are read and set. */
export interface JobFields {
  /** A field of the job; `undoLabel` names it where its label alone would not. */
  readonly field: (label: string, path: FieldPath, undoLabel?: string) => EditableField;
  /** A field of an artwork, typed in the placement at `place`. */
  readonly artworkField: (
    label: string,
    artworkId: string,
    place: FieldPath,
    path: FieldPath,
    undoLabel?: string,
  ) => EditableField;
  /** What is found at a place of the job. */
  readonly notes: (path: FieldPath) => FieldNotes;
  /** Stops and cautions anywhere beneath a place. */
  readonly worries: (path: FieldPath) => { readonly stops: number; readonly cautions: number };
}

/** The newest answer that has some figures, as it is shown. */
export interface ShownAnswer {
  /** Null before the first that has them. */
  readonly answer: JobAnswer | null;
  /** The documents that answer was made of: last good figures are named after those. */
  readonly madeOf: JobInput;
  /** True while a stop withholds newer figures, so that the shown ones are the last good ones. */
  readonly stale: boolean;
  /** Its shared sheets; null where it has none. */
  readonly shared: SharedLook | null;
}

/** The job on the screen: what every part of its docket is shown from, and how it is changed. */
export interface OpenJob extends JobFields {
  readonly jobId: string;
  /** The documents as they stand now. */
  readonly input: JobInput;
  readonly workspace: JobWorkspace;
  /** False until the first answer has come. */
  readonly isChecked: boolean;
  /** Of the newest answer of all, which has no figures while a stop stands; what only waits to be told is in `asked`. */
  readonly findings: readonly Finding[];
  /** What the checks miss because nobody has told it yet. */
  readonly asked: readonly Question[];
  /** Why there are no newer sums; null when all is well. */
  readonly failure: WorkerFailure | null;
  /** The newest answer with a layout and a cost sheet. */
  readonly costs: ShownAnswer;
  /** The newest answer with prices. */
  readonly prices: ShownAnswer;
  /** The newest cost sheet and what its figures are named after; null before the first. */
  readonly figures: FigureNames | null;
  /** Shows a field wherever it is folded away, and takes the focus there. */
  readonly show: (fieldId: string) => void;
}

/**
 * What the parts of a docket do with the maker's documents. How far those are kept is no part of it: that moves on three
 * times after each edit, and would have the whole docket drawn anew each time.
 */
export type JobWorkspace = WorkspaceActions &
  Pick<Workspace, 'blanks' | 'edit' | 'editWithFiles' | 'entries' | 'jobs' | 'note' | 'readFile'>;

export const JobContext = createContext<OpenJob | null>(null);

/** The job on whose screen a part stands. */
export function useJob(): OpenJob {
  const job = useContext(JobContext);
  if (job === null) throw new NoOpenJob();
  return job;
}

// Helpers

class NoOpenJob extends Error {
  override readonly name = 'NoOpenJob';
  constructor() {
    super('a part of the docket stands outside of one');
  }
}
