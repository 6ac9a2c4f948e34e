'use client';

import { type ChangeEvent, useId, useRef, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { backupWords } from '@/app/_words/store/storedWords';
import styles from './KeepCopy.module.css';
import { saveEverything } from './saveEverything';

type Answer =
  | Readonly<{ kind: 'chosen'; name: string; file: unknown }>
  /** It could be brought back but for the workshop it lacks. */
  | Readonly<{ kind: 'lacking'; name: string; file: unknown; sentences: readonly string[] }>
  | Readonly<{ kind: 'told'; sentences: readonly string[]; isWrong: boolean }>;

/** Sentences shown of a file that cannot be brought back; the rest is counted. */
const MOST_TOLD = 5;

/** Saves everything as one file, and brings such a file back. */
export function KeepCopy({ workspace, level }: Readonly<{ workspace: Workspace; level: 2 | 3 }>) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [answer, setAnswer] = useState<Answer | null>(null);
  const Heading = level === 2 ? 'h2' : 'h3';
  const choose = async (event: ChangeEvent<HTMLInputElement>) => {
    const [chosen] = event.target.files ?? [];
    // The same file may be chosen again once it is mended.
    event.target.value = '';
    if (chosen !== undefined) setAnswer(await readChosen(chosen));
  };
  const saveCopy = async () => {
    const missing = await saveEverything(workspace.exportWithFiles);
    if (missing !== null) setAnswer(wrong([missing], null));
  };
  const bringBack = async (name: string, file: unknown, partly = false) => {
    const outcome = await workspace.importAll(`Copy “${name}”`, file, { partly });
    switch (outcome.state) {
      case 'replaced':
        return setAnswer(said(`“${name}” is back. Undo brings what was here before.`));
      case 'notKept':
        return setAnswer(wrong([saveFailureWords[outcome.why]]));
      case 'refused':
        if (outcome.findings.every(({ code }) => code === 'neededMissing')) {
          return setAnswer({ kind: 'lacking', name, file, sentences: outcome.findings.map(backupWords) });
        }
        return setAnswer(wrong(toldOf(outcome.findings.map(backupWords))));
      default:
        return outcome satisfies never;
    }
  };
  return (
    <section className={styles.copy}>
      <Heading>Keep a copy</Heading>
      <p className={styles.words}>
        Everything stays on this device and nowhere else. A copy is one file with your workshop, blanks,
        pictures and jobs.
      </p>
      <div className={styles.row}>
        <Button onPress={() => void saveCopy()}>Save everything as a file</Button>
        <Button onPress={() => input.current?.click()}>Bring a file back</Button>
        <input
          ref={input}
          className="visuallyHidden"
          id={id}
          type="file"
          accept="application/json,.json"
          tabIndex={-1}
          aria-label="File to bring back"
          onChange={(event) => void choose(event)}
        />
      </div>
      <div role="status">
        {answer?.kind === 'chosen' && (
          <div className={styles.row}>
            <p>“{answer.name}” takes the place of everything here, as one step that undo takes back.</p>
            <Button kind="strong" onPress={() => void bringBack(answer.name, answer.file)}>
              Bring it back
            </Button>
            <Button kind="quiet" onPress={() => setAnswer(null)}>
              Leave it
            </Button>
          </div>
        )}
        {answer?.kind === 'lacking' && (
          <>
            {[...answer.sentences, UNCHANGED].map((sentence) => (
              <p key={sentence} className={styles.wrong}>
                {sentence}
              </p>
            ))}
            <div className={styles.row}>
              <p>
                {workspace.workshop === null
                  ? 'What it does hold can be brought back, to go on with a fresh workshop.'
                  : 'What it does hold can take the place of everything here but your workshop, which stays.'}
              </p>
              <Button kind="strong" onPress={() => void bringBack(answer.name, answer.file, true)}>
                {workspace.workshop === null ? 'Bring the rest back' : 'Bring it back beside this workshop'}
              </Button>
              <Button kind="quiet" onPress={() => setAnswer(null)}>
                Leave it
              </Button>
            </div>
          </>
        )}
        {answer?.kind === 'told' &&
          answer.sentences.map((sentence) => (
            <p key={sentence} className={answer.isWrong ? styles.wrong : styles.words}>
              {sentence}
            </p>
          ))}
      </div>
    </section>
  );
}

// Helpers

const said = (sentence: string): Answer => ({ kind: 'told', sentences: [sentence], isWrong: false });
const UNCHANGED = 'Nothing here was changed.';
const wrong = (sentences: readonly string[], end: string | null = UNCHANGED): Answer => ({
  kind: 'told',
  sentences: end === null ? sentences : [...sentences, end],
  isWrong: true,
});

const toldOf = (sentences: readonly string[]): readonly string[] =>
  sentences.length <= MOST_TOLD
    ? sentences
    : [...sentences.slice(0, MOST_TOLD), `And ${sentences.length - MOST_TOLD} more like these.`];

async function readChosen(chosen: File): Promise<Answer> {
  try {
    const file: unknown = JSON.parse(await chosen.text());
    return { kind: 'chosen', name: chosen.name, file };
  } catch {
    return wrong([`“${chosen.name}” is no file saved from here: it cannot be read.`]);
  }
}
