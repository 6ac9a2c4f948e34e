'use client';

import { useState } from 'react';
import { RowList } from '@/app/_controls/RowList';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { FileChooser } from '@/app/_files/FileChooser';
import type { EditOutcome } from '@/app/_store/documentsState';
import { type PurposeWords, purposeWords, refusedFileWords } from '@/app/_words/attachments/attachmentWords';
import { formatterFor } from '@/app/_words/formatter';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Attachment } from '@/shared/schemas/keptFile';
import { AttachmentRow } from './AttachmentRow';
import styles from './Attachments.module.css';
import { useTaking } from './useTaking';

type AttachmentsProps = Readonly<{
  attachments: readonly Attachment[];
  /** What a file may be here; the first is chosen to begin with. */
  purposes: readonly [Attachment['purpose'], ...Attachment['purpose'][]];
  /** How purposes are called here, where that is not as everywhere. */
  words?: PurposeWords | undefined;
  readFile: (id: string) => Promise<StoredFile | null>;
  onAdd: (attachment: Attachment, file: StoredFile) => EditOutcome;
  onRemove: (attachment: Attachment) => void;
  /** Where there is room for one file, another is offered once it is removed. */
  isOne?: boolean;
}>;

/** Files kept with an order, a customer or an entry: the list, and a place to add one. */
export function Attachments(props: AttachmentsProps) {
  const { attachments, purposes, readFile, onAdd, onRemove, isOne = false, words = purposeWords } = props;
  const formatter = formatterFor(useTextContext());
  const [purpose, setPurpose] = useState(purposes[0]);
  const { told, take } = useTaking({ attachments, onAdd });
  return (
    <div className={styles.attachments}>
      {attachments.length > 0 && (
        <RowList>
          {attachments.map((attachment) => (
            <AttachmentRow
              key={`${attachment.fileId} ${attachment.purpose}`}
              {...{ attachment, formatter, words, readFile }}
              onRemove={() => onRemove(attachment)}
            />
          ))}
        </RowList>
      )}
      {!(isOne && attachments.length > 0) && (
        <div className={styles.add}>
          {purposes.length > 1 && (
            <ChoiceField
              label="What the file is"
              value={purpose}
              choices={purposes.map((value) => ({ value, label: words[value] }))}
              onCommit={setPurpose}
            />
          )}
          <FileChooser
            button="Add a file"
            label="File to keep"
            accept=""
            several={!isOne}
            onFiles={(files) => take(files, purpose)}
          />
        </div>
      )}
      <div aria-live="polite">
        {told.map((one) => {
          if (one.state === 'reading')
            return (
              <p key={`reading ${one.name}`} className={styles.more}>
                Reading <bdi>{one.name}</bdi>…
              </p>
            );
          const { sentence, detail } = refusedFileWords(one.name, one.why, formatter);
          return (
            <p key={`refused ${one.name}`} className={styles.wrong}>
              {sentence} {detail}
            </p>
          );
        })}
      </div>
    </div>
  );
}
