import { blankFieldId } from '@/app/_documents/fieldAddress';
import type { ReadyMaker } from '@/app/_keeping/WithWorkspace';
import type { Blank } from '@/shared/schemas/blank';
import type { FieldPath } from '@/shared/setIn';

/** What every part of a blank's editor is given. */
export interface BlankDesk {
  readonly id: string;
  readonly blank: Blank;
  readonly maker: ReadyMaker;
  /** Sets one field; the label is what undo says. */
  readonly set: (label: string, path: FieldPath, value: unknown) => void;
  /** The id of the element a field is typed in. */
  readonly fieldId: (...path: FieldPath) => string;
}

/** Lays a blank on the desk. */
export const blankDesk = (maker: ReadyMaker, id: string, blank: Blank): BlankDesk => ({
  id,
  blank,
  maker,
  set: (label, path, value) => void maker.setField({ kind: 'blank', id }, label, path, value),
  fieldId: (...path) => blankFieldId(id, path),
});
