import { fieldId } from '@/app/_docket/common/fieldId';
import { fieldNotes } from '@/app/_docket/common/fieldNotes';
import type { EditableField, JobFields, OpenJob } from '@/app/_docket/common/useJob';
import type { Target } from '@/app/_documents/workspaceActions';
import type { TextContext } from '@/app/_words/formatter';
import type { FieldPath } from '@/shared/setIn';

type FieldsOf = Pick<OpenJob, 'jobId' | 'input' | 'workspace' | 'findings'>;

/** @returns what the fields of a job need: every field with its id, its findings and the way to set it. */
export function jobFields({ jobId, input, workspace, findings }: FieldsOf, context: TextContext): JobFields {
  const notes = fieldNotes(findings, input.job, context);
  const field = (target: Target, label: string, id: string, path: FieldPath): EditableField => ({
    label,
    id,
    ...notes.at(id),
    onCommit: (value) => void workspace.setField(target, label, path, value),
  });
  return {
    field: (label, path, undoLabel = label) => ({
      ...field({ kind: 'job', id: jobId }, undoLabel, fieldId(path), path),
      label,
    }),
    artworkField: (label, artworkId, place, path, undoLabel = label) => ({
      ...field({ kind: 'artwork', id: artworkId }, undoLabel, fieldId([...place, 'artwork', ...path]), path),
      label,
    }),
    notes: (path) => notes.at(fieldId(path)),
    worries: (path) => notes.beneath(fieldId(path)),
  };
}
