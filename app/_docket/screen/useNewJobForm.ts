'use client';

import { useMemo } from 'react';
import { fieldId } from '@/app/_docket/common/fieldId';
import { fieldNotes } from '@/app/_docket/common/fieldNotes';
import type { DeskField, JobDesk } from '@/app/_docket/common/jobForm';
import type { Maker } from '@/app/_documents/useWorkspace';
import type { Target } from '@/app/_documents/workspaceActions';
import { useTextContext } from '@/app/_fields/useTextContext';
import type { Finding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import type { FieldPath } from '@/shared/setIn';

/** Lays a job on the desk: every field with its id, its findings and the way to set it. */
export function useDesk(jobId: string, input: JobInput, maker: Maker, findings: readonly Finding[]): JobDesk {
  const context = useTextContext();
  return useMemo(() => {
    const notes = fieldNotes(findings, input.job, context);
    const field = (target: Target, label: string, id: string, path: FieldPath): DeskField => ({
      label,
      id,
      ...notes.at(id),
      onCommit: (value) => void maker.setField(target, label, path, value),
    });
    return {
      jobId,
      input,
      maker,
      field: (label, path, undoLabel = label) => ({
        ...field({ kind: 'job', id: jobId }, undoLabel, fieldId(path), path),
        label,
      }),
      artworkField: (label, artworkId, place, path, undoLabel = label) => ({
        ...field(
          { kind: 'artwork', id: artworkId },
          undoLabel,
          fieldId([...place, 'artwork', ...path]),
          path,
        ),
        label,
      }),
      notes: (path) => notes.at(fieldId(path)),
      worries: (path) => notes.beneath(fieldId(path)),
    };
  }, [jobId, input, maker, findings, context]);
}
