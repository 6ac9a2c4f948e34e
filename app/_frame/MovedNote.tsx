'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import { documentAddress } from '@/app/_documents/documentAddress';
import { entryAddress } from '@/app/_documents/entryAddress';
import type { Workspace } from '@/app/_documents/useWorkspace';
import type { MovedEntry } from '@/app/_store/documentsState';
import type { MovedDocument } from '@/app/_transactions/moveInHistory';
import { paperNumberText } from '@/app/_words/paperNumberText';
import { lostWords, movedWords } from '@/app/_words/store/movedWords';
import { isPlainObject } from '@/lib/merging/sameValue';
import { claimedName } from '@/lib/stored/claimedName';
import styles from './MovedNote.module.css';
import type { Move } from './useMoves';

type MovedNoteProps = Readonly<{
  move: Move | null;
  workspace: Pick<Workspace, 'documents' | 'jobs' | 'blanks' | 'papers'>;
  onSeen: () => void;
}>;

/** Says what undo took back or redo made again, in which document, and leads there. */
export function MovedNote({ move, workspace, onSeen }: MovedNoteProps) {
  const path = usePathname();
  const told = move === null ? null : wordsOf(move, workspace);
  const address = move === null ? null : addressOf(move, workspace);
  return (
    <div role="status">
      {told !== null && (
        <div className={styles.note}>
          <p className={styles.words}>
            <bdi>{told}</bdi>
          </p>
          {address !== null &&
            // Within a page only the browser's own link tells it that another field is meant.
            (address.split('#')[0] === path ? (
              address.includes('#') && <a href={address.slice(address.indexOf('#'))}>Show it</a>
            ) : (
              <Link href={address}>Go there</Link>
            ))}
          <button className={styles.close} type="button" onClick={onSeen}>
            <span className="visuallyHidden">Close this note</span>
            <svg viewBox="0 0 12 12" aria-hidden="true" focusable="false">
              <path d="M2 2l8 8M10 2l-8 8" />
            </svg>
          </button>
        </div>
      )}
    </div>
  );
}

// Helpers

/** A job before the pictures and rates that moved with it. */
const kindsInTurn: readonly MovedDocument['kind'][] = [
  'order',
  'job',
  'customer',
  'priceList',
  'blank',
  'workshop',
  'artwork',
];

const inTurn = (moved: readonly MovedDocument[]): readonly MovedDocument[] =>
  moved.toSorted((one, other) => kindsInTurn.indexOf(one.kind) - kindsInTurn.indexOf(other.kind));

function wordsOf({ direction, outcome }: Move, { documents, papers }: MovedNoteProps['workspace']): string {
  if (outcome.state === 'lost') return lostWords(direction, outcome.label);
  const names = inTurn(outcome.moved).map(({ kind, id }) =>
    kind === 'workshop' ? 'the workshop' : claimedName(documents.find((document) => document.id === id)),
  );
  const { label, moved, entries } = outcome;
  const numbered = entries.flatMap(({ entry, counts }) => {
    const number = paperNumberOf(entry, papers);
    return number === null ? [] : [{ number, counts }];
  });
  const onlyNoted =
    moved.length === 0 &&
    numbered.length === 0 &&
    entries.length > 0 &&
    entries.every(({ counts }) => counts === (direction === 'redo'));
  return movedWords({ direction, label, names, papers: numbered, onlyNoted });
}

/** The number of the paper that an entry says went out; null for any other entry. */
function paperNumberOf({ kind, body }: MovedEntry['entry'], papers: Workspace['papers']): string | null {
  const id = kind === 'issuing' && isPlainObject(body) ? body.paperId : null;
  const paper = Object.values(papers)
    .flat()
    .find((one) => one.id === id);
  return paper === undefined ? null : paperNumberText(paper.number);
}

/** Where the first that is still there is seen. */
function addressOf({ outcome }: Move, workspace: MovedNoteProps['workspace']): string | null {
  if (outcome.state === 'lost') return null;
  const { documents, jobs } = workspace;
  const there = inTurn(outcome.moved).find(({ id }) => documents.some((document) => document.id === id));
  if (there !== undefined) return documentAddress(there, jobs);
  const [noted] = outcome.entries;
  return noted === undefined ? null : entryAddress(noted.entry, workspace);
}
