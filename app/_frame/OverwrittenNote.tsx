'use client';

import { Button } from '@/app/_controls/Button';
import type { Workspace } from '@/app/_documents/useWorkspace';
import type { Overwritten } from '@/app/_transactions/commitEdit';
import { fieldWords } from '@/app/_words/fieldWords';
import { placeInBody } from '@/lib/merging/placeInBody';
import { claimedName } from '@/lib/stored/claimedName';
import styles from './OverwrittenNote.module.css';

type OverwrittenNoteProps = Readonly<{
  fields: readonly Overwritten[];
  documents: Workspace['documents'];
  onSeen: () => void;
}>;

/** Fields named one by one; the rest is counted. */
const MOST_NAMED = 3;

/** Says which fields were set in another tab as well, and that what was typed here is in force. */
export function OverwrittenNote({ fields, documents, onSeen }: OverwrittenNoteProps) {
  const names = fields.slice(0, MOST_NAMED).map(({ kind, id, path }) => {
    const body = documents.find((document) => document.id === id)?.body;
    const where = { document: kind, path: placeInBody(body, path) };
    return fieldWords({ ...where, id }, () => claimedName({ body }));
  });
  const more = fields.length - names.length;
  return (
    <div role="status">
      {fields.length > 0 && (
        <div className={styles.note}>
          <p>
            Another tab had changed the same: {names.join('; ')}
            {more > 0 && ` and ${more} more`}. What you typed here is in force; undo brings the other back.
          </p>
          <Button onPress={onSeen}>I have seen it</Button>
        </div>
      )}
    </div>
  );
}
