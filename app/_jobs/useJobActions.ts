'use client';

import { useEffect, useMemo, useRef, useState } from 'react';
import { today } from '@/app/_clock/useToday';
import type { Carried } from '@/app/_copies/useCarrying';
import type { JobRecord } from '@/app/_documents/documentsByKind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { JobState } from '@/shared/schemas/job';
import { jobMaking } from './jobMaking';

/** What can be done with a job of the list; the same object for as long as the list stands. */
export interface JobActions {
  readonly copy: (kept: JobRecord) => void;
  readonly remove: (kept: JobRecord) => void;
  readonly putAway: (kept: JobRecord, away: boolean) => void;
  /** Makes a file of it for another device. */
  readonly carry: (kept: JobRecord) => void;
  readonly setState: (kept: JobRecord, state: JobState) => void;
}

interface Gone {
  readonly name: string;
  readonly how: 'removed' | 'put away';
  /** The step that undo would take back. */
  readonly label: string;
}

interface ListedActions {
  readonly actions: JobActions;
  /** The job that left the list last; null before the first. */
  readonly gone: Gone | null;
  readonly begin: () => void;
}

/** @returns what the list of jobs does, each as one step to undo. */
export function useJobActions(
  workspace: ReadyWorkspace,
  open: (id: string) => void,
  carry: (what: Carried) => void,
  beforeState: (state: JobState) => void,
): ListedActions {
  const [gone, setGone] = useState<Gone | null>(null);
  const latest = useRef({ workspace, open, carry, beforeState });
  useEffect(() => {
    latest.current = { workspace, open, carry, beforeState };
  });
  const actions = useMemo<JobActions>(
    () => ({
      copy: ({ job }) => {
        const id = jobMaking(latest.current.workspace).copy(job);
        if (id !== null) latest.current.open(id);
      },
      remove: ({ id, job }) => {
        const label = `Remove ${job.name}`;
        latest.current.workspace.remove({ kind: 'job', id }, label);
        setGone({ name: job.name, how: 'removed', label });
      },
      putAway: ({ id, job }, away) => {
        const label = away ? `Put ${job.name} away` : `Bring ${job.name} back into the list`;
        latest.current.workspace.setField({ kind: 'job', id }, label, ['archivedOn'], away ? today() : null);
        if (away) setGone({ name: job.name, how: 'put away', label });
      },
      carry: ({ id, job }) => latest.current.carry({ kind: 'job', id, name: job.name }),
      setState: ({ id }, state) => {
        latest.current.beforeState(state);
        latest.current.workspace.setField({ kind: 'job', id }, 'State', ['state'], state);
      },
    }),
    [],
  );
  return {
    actions,
    gone,
    begin: () => {
      const id = jobMaking(workspace).begin();
      if (id !== null) open(id);
    },
  };
}
