'use client';

import { type ReactNode, useState } from 'react';
import { freeName } from '@/lib/jobs/freeName';
import type { JobLink } from '@/lib/kinds/job/jobLinks';
import { userNames } from '@/lib/kinds/usersOf';
import type { Workshop } from '@/shared/schemas/workshop';
import type { FieldPath } from '@/shared/setIn';
import { workshopFieldId } from '../_documents/fieldAddress';
import { newId } from '../_documents/newId';
import { type Adder, AddPart } from '../_shell/AddPart';
import { Disclosure } from '../_shell/Disclosure';
import { RemoveButton } from '../_shell/RemoveButton';
import { RemovedNote } from '../_shell/RemovedNote';
import { documentRegistry } from '../_storage/documentRegistry';
import styles from './PartList.module.css';
import type { WorkshopDesk } from './workshopDesk';

type ListName = 'printers' | 'presses' | 'sheets' | 'packagings' | 'channels';
type PartOf<List extends ListName> = Workshop[List][number];

type PartListProps<List extends ListName> = Readonly<{
  desk: WorkshopDesk;
  list: List;
  kind: JobLink['to'];
  /** What one of them is called, after “Add a”. */
  noun: string;
  /** How many the document takes. */
  most: number;
  lineOf: (part: PartOf<List>) => ReactNode;
  adders: readonly Adder<PartOf<List>>[];
  children: (part: PartOf<List>, path: FieldPath) => ReactNode;
}>;

/** The machines, sheets, packagings or channels of the workshop: each folds open; they are added and removed. */
export function PartList<List extends ListName>(props: PartListProps<List>) {
  const { desk, list, kind, noun, most, lineOf, adders, children } = props;
  const { maker, workshop, set } = desk;
  const [removed, setRemoved] = useState<string | null>(null);
  const [added, setAdded] = useState<string | null>(null);
  // A union of lists is one list of the union, which the type of an indexed access does not say by itself.
  const parts: readonly PartOf<List>[] = workshop[list];
  const usedBy = (id: string) => userNames(documentRegistry, maker.documents, { to: kind, id });
  const add = (make: Adder<PartOf<List>>['make']) => {
    const id = newId();
    const part = make(id);
    const name = freeName(
      part.name,
      parts.map((other) => other.name),
    );
    set(`Add ${name}`, [list, parts.length], { ...part, name });
    setAdded(id);
  };
  const remove = ({ id, name }: PartOf<List>) => {
    set(
      `Remove ${name}`,
      [list],
      parts.filter((other) => other.id !== id),
    );
    setRemoved(name);
  };
  return (
    <div>
      {parts.map((part, index) => (
        <Disclosure
          key={part.id}
          id={workshopFieldId([list, index])}
          heading={part.name}
          line={lineOf(part)}
          open={part.id === added}
        >
          <div className={styles.part}>
            {children(part, [list, index])}
            <div>
              <RemoveButton what={part.name} usedBy={usedBy(part.id)} onRemove={() => remove(part)} />
            </div>
          </div>
        </Disclosure>
      ))}
      <RemovedNote
        what={maker.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void maker.undo()}
      />
      <AddPart
        noun={noun}
        adders={adders}
        blockedBy={parts.length >= most ? `${most} is the most there can be.` : undefined}
        onAdd={add}
      />
    </div>
  );
}
