'use client';

import { createContext, useContext } from 'react';
import type { Workspace } from '@/app/_documents/useWorkspace';
import type { JobInput } from '@/shared/schemas/request';
import type { FieldPath } from '@/shared/setIn';
import type { FieldNotes } from './fieldNotes';

/** What a field of the docket is given besides its value. */
export interface EditableField extends FieldNotes {
  readonly label: string;
  readonly id: string;
  readonly onCommit: (value: unknown) => void;
}

/** The job on the docket, and how its fields are read and set. */
export interface JobFields {
  readonly jobId: string;
  readonly input: JobInput;
  readonly workspace: Workspace;
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

class NoJobFields extends Error {
  override readonly name = 'NoJobOnDesk';
  constructor() {
    super('a part of the docket stands outside of one');
  }
}

export const JobFieldsContext = createContext<JobFields | null>(null);

/** The job of the docket around a part of it. */
export function useJobFields(): JobFields {
  const fields = useContext(JobFieldsContext);
  if (fields === null) throw new NoJobFields();
  return fields;
}
