'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Card } from '@/app/_controls/Card';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { pressLogWords } from '@/app/_words/press/logWords';
import { testTrail } from '@/lib/pressing/testTrail';
import type { Recipe } from '@/shared/schemas/job';
import { TestForm } from './TestForm';

type NewTestProps = Readonly<{ workspace: ReadyWorkspace; onDone: () => void }>;

/** A test beside any run: on which blank, in which press; it begins with the recipe that was tested there last. */
export function NewTest({ workspace, onDone }: NewTestProps) {
  const { blanks, workshop, entries } = workspace;
  const blankChoices = Object.entries(blanks).map(([value, { name }]) => ({ value, label: name }));
  const pressChoices = workshop.presses.map(({ id, name }) => ({ value: id, label: name }));
  const [blankId, setBlankId] = useState<string | null>(blankChoices[0]?.value ?? null);
  const [pressId, setPressId] = useState<string | null>(pressChoices[0]?.value ?? null);
  if (blankId === null || pressId === null) return <p>{pressLogWords.noPress}</p>;
  const use = { blankId, pressId };
  const recipe = testTrail(entries.pressTest, use).at(-1)?.entry.body.recipe ?? recipeOf(workspace, use);
  return (
    <Card>
      <FieldGroup>
        <ChoiceField label="Blank" value={blankId} choices={blankChoices} onCommit={setBlankId} />
        <ChoiceField label="Press" value={pressId} choices={pressChoices} onCommit={setPressId} />
      </FieldGroup>
      {recipe === null ? (
        <p>{pressLogWords.noRecipe}</p>
      ) : (
        <TestForm
          key={`${blankId} ${pressId}`}
          {...{ workspace, onDone }}
          use={{ ...use, recipe }}
          of={{ runId: null, jobId: null, position: null, artworkId: null }}
          measured={null}
        />
      )}
      <Button kind="quiet" onPress={onDone}>
        Leave it
      </Button>
    </Card>
  );
}

// Helpers

/** As a job prints that blank in that press, the one last changed first. */
function recipeOf(
  { jobs }: ReadyWorkspace,
  { blankId, pressId }: Readonly<{ blankId: string; pressId: string }>,
): Recipe | null {
  const placements = jobs.flatMap(({ job }) =>
    job.lines.filter((line) => line.blankId === blankId).flatMap((line) => line.placements),
  );
  return (placements.find((one) => one.pressId === pressId) ?? placements[0])?.recipe ?? null;
}
