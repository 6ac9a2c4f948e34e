'use client';

import { createContext, useContext } from 'react';
import type { Maker } from '@/app/_documents/useWorkspace';
import type { JobInput } from '@/shared/schemas/request';
import type { FieldPath } from '@/shared/setIn';
import type { FieldNotes } from './fieldNotes';

/** What a field of the docket is given besides its value. */
export interface DeskField extends FieldNotes {
  readonly label: string;
  readonly id: string;
  readonly onCommit: (value: unknown) => void;
}

/** The job that lies on the desk, and how its fields are read and set. */
export interface JobDesk {
  readonly jobId: string;
  readonly input: JobInput;
  readonly maker: Maker;
  /** A field of the job; `undoLabel` names it where its label alone would not. */
  readonly field: (label: string, path: FieldPath, undoLabel?: string) => DeskField;
  /** A field of an artwork, typed in the placement at `place`. */
  readonly artworkField: (
    label: string,
    artworkId: string,
    place: FieldPath,
    path: FieldPath,
    undoLabel?: string,
  ) => DeskField;
  /** What is found at a place of the job. */
  readonly notes: (path: FieldPath) => FieldNotes;
  /** Stops and cautions anywhere beneath a place. */
  readonly worries: (path: FieldPath) => { readonly stops: number; readonly cautions: number };
}

export class NoJobOnDesk extends Error {
  override readonly name = 'NoJobOnDesk';
  constructor() {
    super('a part of the docket stands outside of one');
  }
}

export const JobDeskContext = createContext<JobDesk | null>(null);

/** Reads the desk a part of the docket stands on. */
export function useJobDesk(): JobDesk {
  const desk = useContext(JobDeskContext);
  if (desk === null) throw new NoJobOnDesk();
  return desk;
}
