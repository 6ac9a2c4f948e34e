'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import { documentAddress } from '@/app/_documents/documentAddress';
import type { Workspace } from '@/app/_documents/useWorkspace';
import type { MovedDocument } from '@/app/_store/documentsState';
import { lostWords, movedWords } from '@/app/_words/store/movedWords';
import { claimedName } from '@/lib/stored/claimedName';
import styles from './MovedNote.module.css';
import type { Move } from './useMoves';

type MovedNoteProps = Readonly<{
  move: Move | null;
  documents: Workspace['documents'];
  jobs: Workspace['jobs'];
  onSeen: () => void;
}>;

/** Says what undo took back or redo made again, in which document, and leads there. */
export function MovedNote({ move, documents, jobs, onSeen }: MovedNoteProps) {
  const path = usePathname();
  const told = move === null ? null : wordsOf(move, documents);
  const address = move === null ? null : addressOf(move, documents, jobs);
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
const kindsInTurn: readonly MovedDocument['kind'][] = ['job', 'priceList', 'blank', 'workshop', 'artwork'];

const inTurn = (moved: readonly MovedDocument[]): readonly MovedDocument[] =>
  moved.toSorted((one, other) => kindsInTurn.indexOf(one.kind) - kindsInTurn.indexOf(other.kind));

function wordsOf({ direction, outcome }: Move, documents: Workspace['documents']): string {
  if (outcome.state === 'lost') return lostWords(direction, outcome.label);
  const names = inTurn(outcome.moved).map(({ kind, id }) =>
    kind === 'workshop' ? 'the workshop' : claimedName(documents.find((document) => document.id === id)),
  );
  return movedWords({ direction, label: outcome.label, names });
}

/** Where the first that is still there is seen. */
function addressOf(
  { outcome }: Move,
  documents: Workspace['documents'],
  jobs: Workspace['jobs'],
): string | null {
  if (outcome.state === 'lost') return null;
  const there = inTurn(outcome.moved).find(({ id }) => documents.some((document) => document.id === id));
  return there === undefined ? null : documentAddress(there, jobs);
}
