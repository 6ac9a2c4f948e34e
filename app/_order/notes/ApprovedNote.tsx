'use client';

import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { useTyped } from '@/app/_fields/useTyped';
import { changedSinceProofWords } from '@/app/_words/orders/notes/orderNoteWords';
import { seriesNumberText } from '@/shared/orderNumberText';
import type { OrderStep } from '@/shared/schemas/orderEvents';
import { z } from '@/shared/schemas/z';
import { AnswerFields } from './AnswerFields';
import { NoteFrame } from './NoteFrame';
import styles from './Notes.module.css';
import { proofsOf, versionsShown } from './proofVersions';
import { quoteOut } from './quoteOut';
import type { StepNoteProps } from './stepNote';
import { useAnswer } from './useAnswer';
import { useNoting } from './useNoting';

const OTHERWISE = 'otherwise';

/** The customer said yes to what will be printed: to which version of each picture, by whom and how. */
export function ApprovedNote({ on, form, onDone, onLeave }: StepNoteProps) {
  const { facts, workspace, formatter } = on;
  const proofs = proofsOf(facts);
  const [chosenId, setProofId] = useTyped(form, 'proof', z.string(), '');
  const [left, setLeft] = useTyped<readonly string[]>(form, 'left', z.array(z.string()), []);
  const answer = useAnswer(on, form);
  const { problem, noteSteps } = useNoting(on, form);
  const proof = chosenId === OTHERWISE ? undefined : (proofs.find(({ id }) => id === chosenId) ?? proofs[0]);
  const shown = proof === undefined ? facts.artworks : versionsShown(proof);
  const versions = shown.filter(({ artworkId }) => !left.includes(artworkId));
  const nameOf = (id: string) => workspace.artworks[id]?.name ?? 'a picture that is not here';
  const changed = facts.artworks.filter(({ artworkId, version }) =>
    shown.some((one) => one.artworkId === artworkId && one.version !== version),
  );
  const missing =
    versions.length === 0
      ? 'At least one picture has to be approved.'
      : answer.by.value.trim() === ''
        ? 'Who said so comes first.'
        : undefined;
  return (
    <NoteFrame
      name="Approved"
      out={proof === undefined ? quoteOut(on) : { what: 'proof', on: proof.body.issuedOn }}
      {...{ on, form, missing, problem, onLeave }}
      onEnter={(day) => {
        const { by, how, proof: file } = answer;
        const paperId = proof?.id ?? null;
        const step: OrderStep = {
          what: 'approved',
          paperId,
          versions: [...versions],
          by: by.value,
          how,
          proof: file?.attachment ?? null,
        };
        if (noteSteps(day, [step], file === null ? [] : [file.file])) onDone();
      }}
    >
      {proofs.length > 0 && (
        <ChoiceField
          label="What they were shown"
          value={proof?.id ?? OTHERWISE}
          choices={[
            ...proofs.map(({ id, number, body }) => ({
              value: id,
              label: `Proof ${seriesNumberText(number, body.issuedOn)}`,
            })),
            { value: OTHERWISE, label: 'Shown otherwise, as it is now' },
          ]}
          onCommit={setProofId}
        />
      )}
      <fieldset className={styles.set}>
        <legend className={styles.legend}>Said yes to</legend>
        {shown.map(({ artworkId, version }) => (
          <CheckField
            key={artworkId}
            label={`${nameOf(artworkId)}, version ${formatter.number(version)}`}
            checked={!left.includes(artworkId)}
            onCommit={(checked) =>
              setLeft(checked ? left.filter((id) => id !== artworkId) : [...left, artworkId])
            }
          />
        ))}
      </fieldset>
      {changed.length > 0 && (
        <p className={styles.caution}>
          {changedSinceProofWords(changed.map(({ artworkId }) => nameOf(artworkId)))}
        </p>
      )}
      <AnswerFields answer={answer} />
    </NoteFrame>
  );
}
