'use client';

import { useState } from 'react';
import { freeName } from '@/lib/jobs/freeName';
import { jobsMaking } from '@/lib/jobs/jobsMaking';
import { mostEntries } from '@/shared/limits';
import { type BlankSize, blankSchema } from '@/shared/schemas/blank';
import { Button } from '../_shell/Button';
import { Disclosure } from '../_shell/Disclosure';
import { RemoveButton } from '../_shell/RemoveButton';
import { RemovedNote } from '../_shell/RemovedNote';
import { speakerOf } from '../_text/speaker';
import styles from './Blanks.module.css';
import type { BlankDesk } from './blankDesk';
import { positionWords } from './blankWords';
import { SizeFields } from './SizeFields';
import { SizeName } from './SizeName';

/** The sizes of a blank, each folded under what it takes. */
export function SizeList({ desk }: Readonly<{ desk: BlankDesk }>) {
  const { id, blank, maker, set, fieldId } = desk;
  const [removed, setRemoved] = useState<string | null>(null);
  const [renamed, setRenamed] = useState<string | null>(null);
  const speak = speakerOf(maker.workshop);
  const { sizes } = blank;
  const most = mostEntries(blankSchema, ['sizes']);
  const lineOf = ({ widthMm, maxPrints }: BlankSize) =>
    [
      widthMm === null ? null : `${speak.length(widthMm)} wide`,
      ...maxPrints
        .slice(0, 2)
        .map(
          (most) =>
            `${positionWords[most.position].toLowerCase()} ${speak.size(most.widthMm, most.heightMm)}`,
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
    set(`Add ${name} to ${blank.name}`, ['sizes', sizes.length], { ...last, name, onHand: 0 });
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
          <SizeName desk={desk} size={size.name} onRenamed={setRenamed} />
          <SizeFields desk={desk} size={size} index={index} />
          {sizes.length > 1 && (
            <RemoveButton
              what={`size ${size.name}`}
              usedBy={jobsMaking(
                maker.jobs.map(({ job }) => job),
                { blankId: id, size: size.name },
              ).map(({ name }) => name)}
              onRemove={() => remove(size.name)}
            />
          )}
        </Disclosure>
      ))}
      <RemovedNote
        what={maker.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void maker.undo()}
      />
      <div className={styles.ends}>
        <Button blockedBy={sizes.length >= most ? `${most} sizes are the most.` : undefined} onPress={add}>
          Add a size like the last
        </Button>
      </div>
    </div>
  );
}
