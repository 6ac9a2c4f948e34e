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

interface ListedActions {
  readonly actions: JobActions;
  /** Name of the job removed last; null before the first. */
  readonly removed: string | null;
  readonly begin: () => void;
}

/** @returns what the list of jobs does, each as one step to undo. */
export function useJobActions(
  workspace: ReadyWorkspace,
  open: (id: string) => void,
  carry: (what: Carried) => void,
): ListedActions {
  const [removed, setRemoved] = useState<string | null>(null);
  const latest = useRef({ workspace, open, carry });
  useEffect(() => {
    latest.current = { workspace, open, carry };
  });
  const actions = useMemo<JobActions>(
    () => ({
      copy: ({ job }) => {
        const id = jobMaking(latest.current.workspace).copy(job);
        if (id !== null) latest.current.open(id);
      },
      remove: ({ id, job }) => {
        latest.current.workspace.remove({ kind: 'job', id }, `Remove ${job.name}`);
        setRemoved(job.name);
      },
      putAway: ({ id, job }, away) =>
        void latest.current.workspace.setField(
          { kind: 'job', id },
          away ? `Put ${job.name} away` : `Bring ${job.name} back into the list`,
          ['archivedOn'],
          away ? today() : null,
        ),
      carry: ({ id, job }) => latest.current.carry({ kind: 'job', id, name: job.name }),
      setState: ({ id }, state) =>
        void latest.current.workspace.setField({ kind: 'job', id }, 'State', ['state'], state),
    }),
    [],
  );
  return {
    actions,
    removed,
    begin: () => {
      const id = jobMaking(workspace).begin();
      if (id !== null) open(id);
    },
  };
}
