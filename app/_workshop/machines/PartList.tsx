'use client';

import { type ReactNode, useState } from 'react';
import { Disclosure } from '@/app/_controls/Disclosure';
import { RemoveButton } from '@/app/_controls/RemoveButton';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { newId } from '@/app/_documents/newId';
import { type Adder, AddPart } from '@/app/_fields/AddPart';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { freeName } from '@/lib/drafts/freeName';
import { draftFacts } from '@/lib/kinds/draftFacts';
import type { JobLink } from '@/lib/kinds/job/jobLinks';
import { userNames } from '@/lib/kinds/usersOf';
import { mostEntries } from '@/shared/limits';
import { type Workshop, workshopSchema } from '@/shared/schemas/workshop';
import type { FieldPath } from '@/shared/setIn';
import styles from './PartList.module.css';

type ListName = 'printers' | 'presses' | 'sheets' | 'packagings' | 'channels';
type PartOf<List extends ListName> = Workshop[List][number];

type PartListProps<List extends ListName> = Readonly<{
  fields: WorkshopFields;
  list: List;
  kind: JobLink['to'];
  /** What one of them is called, after “Add a”. */
  noun: string;
  lineOf: (part: PartOf<List>) => ReactNode;
  adders: readonly Adder<PartOf<List>>[];
  children: (part: PartOf<List>, path: FieldPath) => ReactNode;
}>;

/** The machines, sheets, packagings or channels of the workshop: each folds open; they are added and removed. */
export function PartList<List extends ListName>(props: PartListProps<List>) {
  const { fields, list, kind, noun, lineOf, adders, children } = props;
  const { workspace, workshop, set } = fields;
  const [removed, setRemoved] = useState<string | null>(null);
  const [added, setAdded] = useState<string | null>(null);
  // A union of lists is one list of the union, which the type of an indexed access does not say by itself.
  const parts: readonly PartOf<List>[] = workshop[list];
  const name: ListName = list;
  const most = mostEntries(workshopSchema, [name]);
  const usedBy = (id: string) => userNames(draftFacts, workspace.documents, { to: kind, id });
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
        what={workspace.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void workspace.undo()}
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
