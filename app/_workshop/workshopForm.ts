import type { ReadyMaker } from '@/app/_keeping/WithWorkspace';
import type { Workshop } from '@/shared/schemas/workshop';
import type { FieldPath } from '@/shared/setIn';

/** What every part of the workshop screen is given. */
export interface WorkshopDesk {
  readonly maker: ReadyMaker;
  readonly workshop: Workshop;
  /** Sets one field; the label is what undo says. */
  readonly set: (label: string, path: FieldPath, value: unknown) => void;
}

/** Lays the workshop on the desk. */
export const workshopDesk = (maker: ReadyMaker): WorkshopDesk => ({
  maker,
  workshop: maker.workshop,
  set: (label, path, value) => void maker.setField({ kind: 'workshop' }, label, path, value),
});
