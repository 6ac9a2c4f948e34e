'use client';

import { useMemo, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { PageHead } from '@/app/_controls/PageHead';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { MakingLinks } from '@/app/_makingFrame/MakingLinks';
import { pressLogWords, withoutRecipeWords } from '@/app/_words/press/logWords';
import { recipeLogs } from '@/lib/pressing/recipeLogs';
import { FaultTable } from './FaultTable';
import { NewTest } from './NewTest';
import { RecipeCard } from './RecipeCard';

/** The press log: by recipe × blank × press, used last first. */
export const PressLogScreen = () => (
  <WithWorkspace>{(workspace) => <PressLogRoom workspace={workspace} />}</WithWorkspace>
);

// Helpers

/** Whatever the log is folded from: one of them that cannot be read is missing in it. */
const LOG_KINDS: ReadonlySet<string> = new Set([
  ...['pressing', 'pressTest', 'washCheck', 'goodsIn', 'runStandard', 'takeBack'],
]);

function PressLogRoom({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const { entries, papers } = workspace;
  const { pressing, pressTest, washCheck, goodsIn } = entries;
  const { runStandard } = papers;
  const [isNew, setNew] = useState(false);
  const { recipes, withoutRecipe } = useMemo(
    () =>
      recipeLogs({
        ...{ pressings: pressing, tests: pressTest, washes: washCheck, goodsIn },
        standards: runStandard,
      }),
    [pressing, pressTest, washCheck, goodsIn, runStandard],
  );
  return (
    <>
      <MakingLinks here="/making/log" />
      <PageHead
        title={pressLogWords.title}
        line={recipes.length === 0 ? pressLogWords.nothing : pressLogWords.line}
        aside={!isNew && <Button onPress={() => setNew(true)}>Note a test press</Button>}
      />
      <UnreadableRecords workspace={workspace} level={2} of={LOG_KINDS} />
      {isNew && <NewTest workspace={workspace} onDone={() => setNew(false)} />}
      {recipes.map((log) => (
        <RecipeCard key={log.key} {...{ workspace, log }} />
      ))}
      {withoutRecipe.length > 0 && <p>{withoutRecipeWords(withoutRecipe.length)}</p>}
      <FaultTable />
    </>
  );
}
