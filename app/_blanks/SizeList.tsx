'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Disclosure } from '@/app/_controls/Disclosure';
import { RemoveButton } from '@/app/_controls/RemoveButton';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { formatterFor } from '@/app/_words/formatter';
import { positionWords } from '@/app/_words/workshop/blankWords';
import { freeName } from '@/lib/drafts/freeName';
import { jobsMaking } from '@/lib/drafts/jobsMaking';
import { mostEntries } from '@/shared/limits';
import { type BlankSize, blankSchema } from '@/shared/schemas/blank';
import styles from './Blanks.module.css';
import type { BlankFields } from './blankFields';
import { SizeFields } from './SizeFields';
import { SizeName } from './SizeName';

/** The sizes of a blank, each folded under what it takes. */
export function SizeList({ fields }: Readonly<{ fields: BlankFields }>) {
  const { id, blank, workspace, set, fieldId } = fields;
  const [removed, setRemoved] = useState<string | null>(null);
  const [renamed, setRenamed] = useState<string | null>(null);
  const formatter = formatterFor(workspace.workshop);
  const { sizes } = blank;
  const most = mostEntries(blankSchema, ['sizes']);
  const lineOf = ({ widthMm, maxPrints }: BlankSize) =>
    [
      widthMm === null ? null : `${formatter.length(widthMm)} wide`,
      ...maxPrints
        .slice(0, 2)
        .map(
          (most) =>
            `${positionWords[most.position].toLowerCase()} ${formatter.size(most.widthMm, most.heightMm)}`,
        ),
    ]
      .filter((word) => word !== null)
      .join(' · ');
  const add = () => {
    const last = sizes.at(-1);
    if (last === undefined) return;
    const name = freeName(
      'New size',
      sizes.map((size) => size.name),
    );
    set(`Add ${name} to ${blank.name}`, ['sizes', sizes.length], { ...last, name });
  };
  const remove = (name: string) => {
    set(
      `Remove ${name}`,
      ['sizes'],
      sizes.filter((size) => size.name !== name),
    );
    setRemoved(name);
  };
  return (
    <div id={fieldId('sizes')} tabIndex={-1}>
      {sizes.map((size, index) => (
        <Disclosure
          key={size.name}
          level={4}
          id={fieldId('sizes', index)}
          heading={size.name}
          line={lineOf(size)}
          open={size.name === renamed}
        >
          <SizeName fields={fields} size={size.name} onRenamed={setRenamed} />
          <SizeFields fields={fields} size={size} index={index} />
          {sizes.length > 1 && (
            <RemoveButton
              what={`size ${size.name}`}
              usedBy={jobsMaking(
                workspace.jobs.map(({ job }) => job),
                { blankId: id, size: size.name },
              ).map(({ name }) => name)}
              onRemove={() => remove(size.name)}
            />
          )}
        </Disclosure>
      ))}
      <RemovedNote
        what={workspace.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void workspace.undo()}
      />
      <div className={styles.ends}>
        <Button blockedBy={sizes.length >= most ? `${most} sizes are the most.` : undefined} onPress={add}>
          Add a size like the last
        </Button>
      </div>
    </div>
  );
}
