'use client';

import { useEffect, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import sheet from '@/app/_controls/ListSheet.module.css';
import { CheckField } from '@/app/_fields/CheckField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { TextField } from '@/app/_fields/TextField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { nameOfRun } from '@/app/_runBook/runEdits';
import { runListTable } from '@/app/_words/making/runs/runListTable';
import type { ToMake } from '@/lib/making/list/toMake';
import { workOfJob } from '@/lib/making/list/workOfJob';
import { textLimits } from '@/shared/limits';
import { type RunWork, runSchema } from '@/shared/schemas/making/run';
import styles from './Runs.module.css';

type NewRunProps = Readonly<{
  workspace: Pick<ReadyWorkspace, 'jobs' | 'kinds'>;
  waiting: readonly ToMake[];
  /** Ids of jobs, orders or stall days that are chosen to begin with. */
  first: readonly string[];
  onAdd: (name: string, works: readonly RunWork[]) => void;
  onLeave: () => void;
}>;

interface Choice {
  readonly id: string;
  readonly name: string;
  readonly works: readonly RunWork[];
}

const NAME = 'run-new-name';
/** A run holds no more. */
const MOST_WORKS = 24;

/** What is made together, chosen from what waits and from all jobs. */
export function NewRun({ workspace: { jobs, kinds }, waiting, first, onAdd, onLeave }: NewRunProps) {
  const [name, setName] = useState('');
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set(first));
  useEffect(() => focusById(NAME), []);
  const groups: readonly { readonly name: string; readonly choices: readonly Choice[] }[] = [
    { name: runListTable.orders, choices: waiting.filter(({ kind }) => kind === 'order') },
    { name: runListTable.stallDays, choices: waiting.filter(({ kind }) => kind === 'stallDay') },
    {
      name: runListTable.jobs,
      choices: jobs.map(({ id, job }) => ({
        ...{ id, name: job.name },
        works: [workOfJob(id, kinds.order.bodies)],
      })),
    },
  ];
  const picked = groups.flatMap(({ choices }) => choices.filter(({ id }) => chosen.has(id)));
  // A job that stands in an order and is ticked by itself as well is made once, for the order.
  const works = [
    ...new Map(
      picked
        .flatMap((one) => one.works)
        .toReversed()
        .map((work) => [work.jobId, work]),
    ).values(),
  ].toReversed();
  const missing =
    works.length === 0
      ? runListTable.nothingChosen
      : works.length > MOST_WORKS
        ? runListTable.tooMany
        : undefined;
  const toggle = (id: string, isIn: boolean) =>
    setChosen(new Set(isIn ? [...chosen, id] : [...chosen].filter((one) => one !== id)));
  return (
    <EntryForm
      label={runListTable.new}
      className={sheet.adding}
      missing={missing}
      onEnter={() => onAdd(name.trim() === '' ? nameOfRun(picked.map((one) => one.name)) : name, works)}
    >
      <TextField
        label={runListTable.name}
        hint={runListTable.nameHint}
        id={NAME}
        value={name}
        {...textLimits(runSchema, ['name'])}
        onCommit={setName}
      />
      {groups
        .filter(({ choices }) => choices.length > 0)
        .map((group) => (
          <fieldset className={styles.choices} key={group.name}>
            <legend>{group.name}</legend>
            {group.choices.map((choice) => (
              <CheckField
                key={choice.id}
                label={choice.name}
                checked={chosen.has(choice.id)}
                onCommit={(isIn) => toggle(choice.id, isIn)}
              />
            ))}
          </fieldset>
        ))}
      <div className={sheet.ends}>
        <Button kind="strong" type="submit" blockedBy={missing}>
          {runListTable.plan}
        </Button>
        <Button kind="quiet" onPress={onLeave}>
          {runListTable.leave}
        </Button>
      </div>
    </EntryForm>
  );
}
