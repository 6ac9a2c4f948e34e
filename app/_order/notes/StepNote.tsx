'use client';

import { AcceptedNote } from './AcceptedNote';
import { ApprovedNote } from './ApprovedNote';
import { BlanksOrderedNote } from './BlanksOrderedNote';
import { ChangeNote } from './ChangeNote';
import { LostNote } from './LostNote';
import { PlainNote } from './PlainNote';
import { RemindedNote } from './RemindedNote';
import { ReprintNote } from './ReprintNote';
import { RevisedNote } from './RevisedNote';
import type { NotedStep, StepNoteProps } from './stepNote';

/** The form of whatever happened. */
export function StepNote({ what, ...rest }: StepNoteProps & Readonly<{ what: NotedStep }>) {
  switch (what) {
    case 'accepted':
      return <AcceptedNote {...rest} />;
    case 'blanksOrdered':
      return <BlanksOrderedNote {...rest} />;
    case 'approved':
      return <ApprovedNote {...rest} />;
    case 'revised':
      return <RevisedNote {...rest} />;
    case 'change':
      return <ChangeNote {...rest} />;
    case 'reprint':
      return <ReprintNote {...rest} />;
    case 'lost':
      return <LostNote {...rest} />;
    case 'reminded':
      return <RemindedNote {...rest} />;
    default:
      return <PlainNote what={what} {...rest} />;
  }
}
