'use client';

import { useSearchParams } from 'next/navigation';
import { useEffect, useState } from 'react';
import { today } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { Disclosure } from '@/app/_controls/Disclosure';
import { PageHead } from '@/app/_controls/PageHead';
import { RemoveButton } from '@/app/_controls/RemoveButton';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { useGoToHash } from '@/app/_controls/useGoToHash';
import { Carry } from '@/app/_copies/Carry';
import { blankFieldId } from '@/app/_documents/fieldAddress';
import { newId } from '@/app/_documents/newId';
import { AddPart } from '@/app/_fields/AddPart';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { elsewhereWords } from '@/app/_words/workshop/stockWords';
import { freeName } from '@/lib/drafts/freeName';
import { startingBlankNames } from '@/lib/examples/blankPatterns';
import { startingBlank, startingBlankLabel } from '@/lib/examples/startingBlanks';
import { draftFacts } from '@/lib/kinds/draftFacts';
import { userNames } from '@/lib/kinds/usersOf';
import type { Blank } from '@/shared/schemas/blank';
import { BlankEditor } from './BlankEditor';
import { BlankLine } from './BlankLine';
import styles from './Blanks.module.css';
import { blankFields } from './blankFields';

/** Everything a maker prints on. */
export function BlanksScreen() {
  return <WithWorkspace>{(workspace) => <Blanks workspace={workspace} />}</WithWorkspace>;
}

// Helpers

function Blanks({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  useGoToHash();
  // A job leads here with the blank it stands on.
  const [added, setAdded] = useState(useSearchParams().get('id'));
  const [removed, setRemoved] = useState<string | null>(null);
  const { workshop } = workspace;
  useEffect(() => {
    const opened = added === null ? null : document.getElementById(blankFieldId(added, []));
    opened?.querySelector('button')?.focus();
  }, [added]);
  const blanks = Object.entries(workspace.blanks).toSorted(([, a], [, b]) => a.name.localeCompare(b.name));
  const add = (blank: Blank) => {
    const id = newId();
    const name = freeName(
      blank.name,
      blanks.map(([, other]) => other.name),
    );
    workspace.addBlank(id, { ...blank, name });
    setAdded(id);
  };
  const usedBy = (id: string) => userNames(draftFacts, workspace.documents, { to: 'blank', id });
  return (
    <>
      <PageHead
        title="Blanks"
        line="What you print on: what it is made of, what it costs, how large a print it takes."
      />
      <UnreadableRecords
        workspace={{ ...workspace, unreadable: workspace.unreadable.filter(({ kind }) => kind === 'blank') }}
        level={2}
      />
      <div className={styles.list}>
        {blanks.map(([id, blank]) => (
          <Disclosure
            key={id}
            level={2}
            id={blankFieldId(id, [])}
            heading={blank.name}
            line={
              <BlankLine
                blank={blank}
                workshop={workshop}
                onHand={workspace.onHand[id] ?? {}}
                elsewhere={elsewhereWords(
                  workspace.piles,
                  { blankId: id, sizes: blank.sizes.map(({ name }) => name) },
                  formatterFor(workshop),
                )}
              />
            }
            open={id === added}
          >
            <BlankEditor fields={blankFields(workspace, id, blank)} />
            <div className={styles.ends}>
              <Button kind="quiet" onPress={() => add({ ...blank, name: `${blank.name}, copy` })}>
                Duplicate <span className="visuallyHidden">{blank.name}</span>
              </Button>
              <Carry store={workspace} what={{ kind: 'blank', id, name: blank.name }} isOneOfMany />
              <RemoveButton
                what={blank.name}
                usedBy={usedBy(id)}
                onRemove={() => {
                  workspace.remove({ kind: 'blank', id }, `Remove ${blank.name}`);
                  setRemoved(blank.name);
                }}
              />
            </div>
          </Disclosure>
        ))}
        {blanks.length === 0 && <p className={styles.none}>None yet.</p>}
      </div>
      <RemovedNote
        what={workspace.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void workspace.undo()}
      />
      <AddPart
        noun="blank"
        adders={startingBlankNames.map((name) => ({
          label: startingBlankLabel(name, workshop),
          make: () => startingBlank(name, today(), workshop),
        }))}
        onAdd={(make) => add(make(''))}
      />
    </>
  );
}
