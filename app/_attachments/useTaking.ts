'use client';

import { useEffect, useRef, useState } from 'react';
import { today } from '@/app/_clock/useToday';
import { breathing } from '@/app/_store/breathing';
import type { EditOutcome } from '@/app/_store/documentsState';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Attachment } from '@/shared/schemas/keptFile';
import { type AttachmentRefusal, takeAttachment } from './takeAttachment';

/** A file that is being read, or was not taken. */
type Told =
  | { readonly state: 'reading'; readonly name: string }
  | { readonly state: 'refused'; readonly name: string; readonly why: AttachmentRefusal | NotTaken };

/** The file was read, and the record did not take it. */
type NotTaken = { readonly code: 'alreadyHere' } | { readonly code: 'notAdded' };

interface TakingOptions {
  readonly attachments: readonly Attachment[];
  readonly onAdd: (attachment: Attachment, file: StoredFile) => EditOutcome;
}

/** Takes files in, one after the other. Whatever goes wrong with one is told, and the others come all the same. */
export function useTaking(options: TakingOptions) {
  const [told, setTold] = useState<readonly Told[]>([]);
  const latest = useRef(options);
  useEffect(() => {
    latest.current = options;
  });
  const before = useRef(Promise.resolve());

  const takeOne = async (
    file: File,
    purpose: Attachment['purpose'],
    added: Set<string>,
  ): Promise<AttachmentRefusal | NotTaken | null> => {
    const taken = await takeAttachment(file, { purpose, addedOn: today(), pause: breathing() });
    if (taken.state === 'refused') return taken.why;
    const { attachments, onAdd } = latest.current;
    const { fileId } = taken.attachment;
    const isHere = attachments.some((one) => one.fileId === fileId && one.purpose === purpose);
    // What was added a moment ago may not be shown yet.
    if (isHere || added.has(fileId)) return { code: 'alreadyHere' };
    added.add(fileId);
    return onAdd(taken.attachment, taken.file).state === 'shown' ? null : { code: 'notAdded' };
  };
  const takeAll = async (files: readonly File[], purpose: Attachment['purpose']): Promise<void> => {
    const refused: Told[] = [];
    const added = new Set<string>();
    for (const file of files) {
      const { name } = file;
      setTold([...refused, { state: 'reading', name }]);
      const why = await takeOne(file, purpose, added);
      if (why !== null) refused.push({ state: 'refused', name, why });
    }
    setTold(refused);
  };
  /** Files that come while others are read wait for these. */
  const take = (files: readonly File[], purpose: Attachment['purpose']): void => {
    before.current = before.current.then(() => takeAll(files, purpose));
  };
  return { told, take };
}
