'use client';

import { useState } from 'react';
import { Attachments } from '@/app/_attachments/Attachments';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { CheckField } from '@/app/_fields/CheckField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { formMemory } from '@/app/_fields/formMemory';
import { TextField } from '@/app/_fields/TextField';
import { useTyped, useTypedText } from '@/app/_fields/useTyped';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { faultNames, faultSigns } from '@/app/_words/press/faultWords';
import { changedWords, unscoredWords } from '@/app/_words/press/testWords';
import { changedThings } from '@/lib/pressing/changedThings';
import type { RecipeUse } from '@/lib/pressing/recipeKey';
import { scoredTraits } from '@/lib/pressing/testScores';
import { testTrail } from '@/lib/pressing/testTrail';
import type { StoredFile } from '@/lib/stored/storedFile';
import { textLimits } from '@/shared/limits';
import type { Attachment } from '@/shared/schemas/keptFile';
import { type PressTest, pressTestSchema } from '@/shared/schemas/pressLog';
import { z } from '@/shared/schemas/z';
import { pressFaults } from '@/shared/tables/faults';
import styles from './Log.module.css';
import { RecipeFields, useRecipeTyped } from './RecipeFields';
import { ScoreRow } from './ScoreRow';

type TestFormProps = Readonly<{
  workspace: ReadyWorkspace;
  /** On which blank, in which press, and the recipe to begin with. */
  use: RecipeUse;
  of: Pick<PressTest, 'runId' | 'jobId' | 'position' | 'artworkId'>;
  /** What was measured as the press was heated up; null where nothing was. */
  measured: Pick<PressTest, 'measuredC' | 'roomC' | 'humidity'> | null;
  onDone: () => void;
}>;

/** A test press: what was set, what changed since the one before, and how it came out. */
export function TestForm({ workspace, use, of, measured, onDone }: TestFormProps) {
  const { blankId, pressId } = use;
  const today = useToday();
  const form = {
    orderId: of.runId ?? 'press-log',
    name: `press test ${blankId} ${pressId}`,
    isErased: false,
  };
  const trail = testTrail(workspace.entries.pressTest, use);
  const before = trail.at(-1)?.entry.body;
  const recipe = useRecipeTyped(form, use.recipe);
  const [scores, setScores] = useTyped(form, 'scores', pressTestSchema.shape.scores, NO_SCORES);
  const [faults, setFaults] = useTyped(form, 'faults', z.array(z.enum(pressFaults)), []);
  const lot = useTypedText(form, 'lot', before?.lot ?? '');
  const paperLot = useTypedText(form, 'paperLot', before?.paperLot ?? '');
  const inkLot = useTypedText(form, 'inkLot', before?.inkLot ?? '');
  const note = useTypedText(form, 'note');
  const [photo, setPhoto] = useState<{ attachment: Attachment; file: StoredFile } | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const test: PressTest = {
    ...{ ...of, day: today, blankId, pressId, coverage: null, recipe: recipe.value },
    ...{ lot: orNull(lot.value), paperLot: orNull(paperLot.value), inkLot: orNull(inkLot.value) },
    ...{ measuredC: measured?.measuredC ?? null, roomC: measured?.roomC ?? null },
    ...{ humidity: measured?.humidity ?? null, scores, faults: [...faults] },
    ...{ photo: photo?.attachment ?? null, note: note.value },
  };
  const isSaid = faults.length > 0 || scoredTraits.some((trait) => scores[trait] !== null);
  const missing = isSaid ? undefined : unscoredWords;
  const enter = () => {
    const files = photo === null ? [] : [photo.file];
    const { state } = workspace.note('Test press', [{ kind: 'pressTest', body: test }], [], files);
    setProblem(state === 'shown' ? null : notNotedWords(state));
    if (state !== 'shown') return;
    formMemory.forget(form);
    onDone();
  };
  return (
    <EntryForm className={styles.form} label="Test press" missing={missing} onEnter={enter}>
      <RecipeFields {...recipe} />
      <p className={styles.changed}>
        {changedWords(before === undefined ? null : changedThings(before, test))}
      </p>
      <fieldset className={styles.scores}>
        <legend>Scores, 1 worst to 5 best</legend>
        {scoredTraits.map((trait) => (
          <ScoreRow
            key={trait}
            trait={trait}
            value={scores[trait]}
            onChange={(value) => setScores({ ...scores, [trait]: value })}
          />
        ))}
      </fieldset>
      <Fold summary="What is wrong" line={faults.length === 0 ? 'nothing named' : `${faults.length} named`}>
        {pressFaults.map((fault) => (
          <CheckField
            key={fault}
            label={`${faultNames[fault]}: ${faultSigns[fault]}`}
            checked={faults.includes(fault)}
            onCommit={(is) => setFaults(is ? [...faults, fault] : faults.filter((one) => one !== fault))}
          />
        ))}
      </Fold>
      <Fold summary="Lots, photo, note" line="may stay empty">
        <FieldGroup>
          <TextField label="Lot of the cloth" {...textLimits(pressTestSchema, ['lot'])} {...lot} />
          <TextField label="Lot of the paper" {...textLimits(pressTestSchema, ['paperLot'])} {...paperLot} />
          <TextField label="Lot of the ink" {...textLimits(pressTestSchema, ['inkLot'])} {...inkLot} />
          <TextField label="Note" rows={2} {...textLimits(pressTestSchema, ['note'])} {...note} />
        </FieldGroup>
        <Attachments
          attachments={photo === null ? [] : [photo.attachment]}
          purposes={['sample']}
          isOne
          readFile={async () => photo?.file ?? null}
          onAdd={(attachment, file) => {
            setPhoto({ attachment, file });
            return { state: 'shown' };
          }}
          onRemove={() => setPhoto(null)}
        />
      </Fold>
      <p role="alert">{problem}</p>
      <Button type="submit" kind="strong" blockedBy={missing}>
        Note the test
      </Button>
    </EntryForm>
  );
}

// Helpers

const NO_SCORES: PressTest['scores'] = {
  ...{ density: null, sharpness: null, scorch: null, pressLine: null },
  ...{ ghost: null, specks: null, evenness: null },
};

const orNull = (text: string): string | null => (text.trim() === '' ? null : text.trim());
