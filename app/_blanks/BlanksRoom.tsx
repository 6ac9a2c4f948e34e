'use client';

import { useSearchParams } from 'next/navigation';
import { useEffect, useState } from 'react';
import { startingBlank, startingBlankLabel, startingBlankNames } from '@/lib/examples/startingBlanks';
import { freeName } from '@/lib/jobs/freeName';
import { userNames } from '@/lib/kinds/usersOf';
import type { Blank } from '@/shared/schemas/blank';
import { blankFieldId } from '../_documents/fieldAddress';
import { newId } from '../_documents/newId';
import { UnreadableRecords } from '../_documents/UnreadableRecords';
import { today } from '../_documents/useToday';
import { type ReadyMaker, WithWorkshop } from '../_documents/WithWorkshop';
import { AddPart } from '../_shell/AddPart';
import { Button } from '../_shell/Button';
import { Disclosure } from '../_shell/Disclosure';
import { PageHead } from '../_shell/PageHead';
import { RemoveButton } from '../_shell/RemoveButton';
import { RemovedNote } from '../_shell/RemovedNote';
import { useGoToHash } from '../_shell/useGoToHash';
import { documentRegistry } from '../_storage/documentRegistry';
import { BlankEditor } from './BlankEditor';
import { BlankLine } from './BlankLine';
import styles from './Blanks.module.css';
import { blankDesk } from './blankDesk';

/** Everything a maker prints on. */
export function BlanksRoom() {
  return <WithWorkshop>{(maker) => <Room maker={maker} />}</WithWorkshop>;
}

// Helpers

function Room({ maker }: Readonly<{ maker: ReadyMaker }>) {
  useGoToHash();
  // A job leads here with the blank it stands on.
  const [added, setAdded] = useState(useSearchParams().get('id'));
  const [removed, setRemoved] = useState<string | null>(null);
  const { workshop } = maker;
  useEffect(() => {
    const opened = added === null ? null : document.getElementById(blankFieldId(added, []));
    opened?.querySelector('button')?.focus();
  }, [added]);
  const blanks = Object.entries(maker.blanks).toSorted(([, a], [, b]) => a.name.localeCompare(b.name));
  const add = (blank: Blank) => {
    const id = newId();
    const name = freeName(
      blank.name,
      blanks.map(([, other]) => other.name),
    );
    maker.addBlank(id, { ...blank, name });
    setAdded(id);
  };
  const usedBy = (id: string) => userNames(documentRegistry, maker.documents, { to: 'blank', id });
  return (
    <>
      <PageHead
        title="Blanks"
        line="What you print on: what it is made of, what it costs, how large a print it takes."
      />
      <UnreadableRecords
        maker={{ ...maker, unreadable: maker.unreadable.filter(({ kind }) => kind === 'blank') }}
        level={2}
      />
      <div className={styles.list}>
        {blanks.map(([id, blank]) => (
          <Disclosure
            key={id}
            level={2}
            id={blankFieldId(id, [])}
            heading={blank.name}
            line={<BlankLine blank={blank} workshop={workshop} />}
            open={id === added}
          >
            <BlankEditor desk={blankDesk(maker, id, blank)} />
            <div className={styles.ends}>
              <Button kind="quiet" onPress={() => add({ ...blank, name: `${blank.name}, copy` })}>
                Copy <span className="visuallyHidden">{blank.name}</span>
              </Button>
              <RemoveButton
                what={blank.name}
                usedBy={usedBy(id)}
                onRemove={() => {
                  maker.remove({ kind: 'blank', id }, `Remove ${blank.name}`);
                  setRemoved(blank.name);
                }}
              />
            </div>
          </Disclosure>
        ))}
        {blanks.length === 0 && <p className={styles.none}>None yet.</p>}
      </div>
      <RemovedNote
        what={maker.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void maker.undo()}
      />
      <AddPart
        noun="blank"
        adders={startingBlankNames.map((name) => ({
          label: startingBlankLabel(name),
          make: () => startingBlank(name, today(), workshop),
        }))}
        onAdd={(make) => add(make(''))}
      />
    </>
  );
}
