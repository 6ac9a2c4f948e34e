'use client';

import { useMemo } from 'react';
import { fieldId } from '@/app/_docket/common/fieldId';
import { fieldNotes } from '@/app/_docket/common/fieldNotes';
import type { EditableField, JobFields } from '@/app/_docket/common/jobFields';
import type { Workspace } from '@/app/_documents/useWorkspace';
import type { Target } from '@/app/_documents/workspaceActions';
import { useTextContext } from '@/app/_fields/useTextContext';
import type { Finding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import type { FieldPath } from '@/shared/setIn';

/** What the fields of a job need: every field with its id, its findings and the way to set it. */
export function useNewJobFields(
  jobId: string,
  input: JobInput,
  workspace: Workspace,
  findings: readonly Finding[],
): JobFields {
  const context = useTextContext();
  return useMemo(() => {
    const notes = fieldNotes(findings, input.job, context);
    const field = (target: Target, label: string, id: string, path: FieldPath): EditableField => ({
      label,
      id,
      ...notes.at(id),
      onCommit: (value) => void workspace.setField(target, label, path, value),
    });
    return {
      jobId,
      input,
      workspace,
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
  }, [jobId, input, workspace, findings, context]);
}
