import { blankFieldId } from '@/app/_documents/fieldAddress';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Blank } from '@/shared/schemas/blank';
import type { FieldPath } from '@/shared/setIn';

/** What every part of a blank's editor is given. */
export interface BlankFields {
  readonly id: string;
  readonly blank: Blank;
  readonly workspace: ReadyWorkspace;
  /** Sets one field; the label is what undo says. */
  readonly set: (label: string, path: FieldPath, value: unknown) => void;
  /** The id of the element a field is typed in. */
  readonly fieldId: (...path: FieldPath) => string;
}

/** What the fields of a blank need: the blank, and how its fields are set. */
export const blankFields = (workspace: ReadyWorkspace, id: string, blank: Blank): BlankFields => ({
  id,
  blank,
  workspace,
  set: (label, path, value) => void workspace.setField({ kind: 'blank', id }, label, path, value),
  fieldId: (...path) => blankFieldId(id, path),
});
