import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Workshop } from '@/shared/schemas/workshop';
import type { FieldPath } from '@/shared/setIn';

/** What every part of the workshop screen is given. */
export interface WorkshopFields {
  readonly workspace: ReadyWorkspace;
  readonly workshop: Workshop;
  /** Sets one field; the label is what undo says. */
  readonly set: (label: string, path: FieldPath, value: unknown) => void;
}

/** What the fields of the workshop need: the workshop, and how its fields are set. */
export const workshopFields = (workspace: ReadyWorkspace): WorkshopFields => ({
  workspace,
  workshop: workspace.workshop,
  set: (label, path, value) => void workspace.setField({ kind: 'workshop' }, label, path, value),
});
