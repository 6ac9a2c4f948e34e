'use client';

import { useMemo, useState } from 'react';
import { Attachments } from '@/app/_attachments/Attachments';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { CheckField } from '@/app/_fields/CheckField';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { formMemory } from '@/app/_fields/formMemory';
import { TextField } from '@/app/_fields/TextField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useTyped, useTypedText } from '@/app/_fields/useTyped';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { dayQuestion } from '@/app/_words/orders/orderDayWords';
import { faultNames, faultSigns } from '@/app/_words/press/faultWords';
import { changedWords, testToComeWords, unscoredWords } from '@/app/_words/press/testWords';
import { coverageOfArtwork } from '@/lib/job/coverageOfArtwork';
import { ownEntry } from '@/lib/job/ownEntry';
import { changedThings } from '@/lib/pressing/changedThings';
import type { RecipeUse } from '@/lib/pressing/recipeKey';
import { scoredTraits } from '@/lib/pressing/testScores';
import { testTrail } from '@/lib/pressing/testTrail';
import type { StoredFile } from '@/lib/stored/storedFile';
import { textLimits } from '@/shared/limits';
import type { Attachment } from '@/shared/schemas/keptFile';
import { type PressTest, pressTestSchema } from '@/shared/schemas/making/pressLog';
import { daySchema } from '@/shared/schemas/rate';
import { z } from '@/shared/schemas/z';
import { pressFaults } from '@/shared/tables/faults';
import { TYPICAL_BLACK_SHARE } from '@/shared/tables/typicalRates';
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
  const formatter = formatterFor(useTextContext());
  const [day, setDay] = useTyped(form, 'day', daySchema, today);
  const trail = testTrail(workspace.entries.pressTest, use);
  // One that is noted later stands before those of later days.
  const before = trail.findLast(({ entry }) => entry.body.day <= day)?.entry.body;
  const recipe = useRecipeTyped(form, use.recipe);
  const [scores, setScores] = useTyped(form, 'scores', pressTestSchema.shape.scores, NO_SCORES);
  const [faults, setFaults] = useTyped(form, 'faults', z.array(z.enum(pressFaults)), []);
  const lot = useTypedText(form, 'lot', before?.lot ?? '');
  const paperLot = useTypedText(form, 'paperLot', before?.paperLot ?? '');
  const inkLot = useTypedText(form, 'inkLot', before?.inkLot ?? '');
  const note = useTypedText(form, 'note');
  const [photo, setPhoto] = useState<{ attachment: Attachment; file: StoredFile } | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const coverage = useMemo(() => coverageKnown(workspace, of.artworkId), [workspace, of.artworkId]);
  const test: PressTest = {
    ...{ ...of, day, blankId, pressId, coverage, recipe: recipe.value },
    ...{ lot: orNull(lot.value), paperLot: orNull(paperLot.value), inkLot: orNull(inkLot.value) },
    ...{ measuredC: measured?.measuredC ?? null, roomC: measured?.roomC ?? null },
    ...{ humidity: measured?.humidity ?? null, scores, faults: [...faults] },
    ...{ photo: photo?.attachment ?? null, note: note.value },
  };
  const isSaid = faults.length > 0 || scoredTraits.some((trait) => scores[trait] !== null);
  const isToCome = day > today;
  const missing = isToCome ? testToComeWords : isSaid ? undefined : unscoredWords;
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
      <Fold summary="Day, lots, photo, note" line={day === today ? 'today' : formatter.day(day)}>
        <FieldGroup>
          <DateField
            label="Day"
            width="narrow"
            needed
            value={day}
            issue={isToCome ? testToComeWords : undefined}
            caution={isToCome ? undefined : (dayQuestion(day, today, formatter) ?? undefined)}
            hint={day === today ? 'Set it back where it was pressed earlier.' : undefined}
            onCommit={(value) => setDay(value ?? today)}
          />
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

/** Mean ink of the picture as its maker or its file tells; null of one that only the typical figure is known of. */
function coverageKnown({ artworks }: ReadyWorkspace, artworkId: string | null): number | null {
  const artwork = artworkId === null ? undefined : ownEntry(artworks, artworkId);
  if (artwork === undefined) return null;
  const { value, origin } = coverageOfArtwork(artwork, TYPICAL_BLACK_SHARE);
  return origin === 'typical' ? null : value;
}

const orNull = (text: string): string | null => (text.trim() === '' ? null : text.trim());
