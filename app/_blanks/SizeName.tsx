'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { TextField } from '@/app/_fields/TextField';
import { renameSize } from '@/lib/drafts/renameSize';
import { renamedStock } from '@/lib/stock/renamedStock';
import { textLimits } from '@/shared/limits';
import { blankSizeSchema } from '@/shared/schemas/blank';
import styles from './Blanks.module.css';
import type { BlankFields } from './blankFields';

type SizeNameProps = Readonly<{
  fields: BlankFields;
  size: string;
  /** Told before the size is drawn under its new name. */
  onRenamed: (name: string) => void;
}>;

/**
 * The name of a size. Jobs know sizes by their names, so a new name is given all at once, in the blank and in every
 * job, and not letter by letter. What lies there under the old name is said to lie under the new one.
 */
export function SizeName({ fields: { id, blank, workspace, fieldId }, size, onRenamed }: SizeNameProps) {
  const list = fieldId('sizes');
  const [name, setName] = useState(size);
  const wanted = name.trim();
  const limits = textLimits(blankSizeSchema, ['name']);
  const isTaken = wanted !== size && blank.sizes.some((other) => other.name === wanted);
  const isReady = wanted !== '' && wanted !== size && wanted.length <= limits.longest && !isTaken;
  const rename = () => {
    const change = { blankId: id, from: size, to: wanted };
    focusById(list);
    onRenamed(wanted);
    const stock = renamedStock(workspace.piles, change);
    const entries = stock.map((body) => ({ kind: 'stockTransfer', body }) as const);
    workspace.note(`Rename ${size} to ${wanted}`, entries, [
      {
        do: 'change',
        kind: 'blank',
        id,
        to: (body) => ({
          ...body,
          sizes: body.sizes.map((other) => (other.name === size ? { ...other, name: wanted } : other)),
        }),
      },
      ...workspace.jobs.flatMap(({ id: jobId, job }) =>
        renameSize(job, change) === job
          ? []
          : [
              {
                do: 'change',
                kind: 'job',
                id: jobId,
                to: (body: typeof job) => renameSize(body, change),
              } as const,
            ],
      ),
    ]);
  };
  return (
    <div className={styles.naming}>
      <TextField
        label="Name"
        width="full"
        value={name}
        {...limits}
        issue={isTaken ? `There is a size ${wanted} already.` : undefined}
        onCommit={setName}
      />
      <div className={styles.act}>
        <Button blockedBy={isReady ? undefined : 'Type another name first.'} onPress={rename}>
          Rename, in all jobs too
        </Button>
      </div>
    </div>
  );
}
