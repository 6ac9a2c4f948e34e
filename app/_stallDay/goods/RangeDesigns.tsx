'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import { stallFieldId } from '@/app/_documents/fieldAddress';
import { typing } from '@/app/_documents/typing';
import { AddPart } from '@/app/_fields/AddPart';
import { CheckField } from '@/app/_fields/CheckField';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { designChoice } from '@/app/_words/stall/goodsWords';
import { designKey } from '@/lib/stall/designKey';
import { mostEntries, numberLimits, textLimits } from '@/shared/limits';
import { type RangeDesign, type StallRange, stallDaySchema } from '@/shared/schemas/stallDay';
import { freshDesign } from './freshDesign';
import styles from './Goods.module.css';
import { lineNameOf, linesLeft } from './linesOfJobs';
import { MadeForOrder } from './MadeForOrder';

type RangeDesignsProps = Readonly<{ on: StallOnScreen; range: StallRange; at: number }>;

const most = mostEntries(stallDaySchema, ['ranges', 0, 'designs']);

/** The designs of a range, each with its part of what is asked for. */
export function RangeDesigns({ on, range, at }: RangeDesignsProps) {
  const { stallDay, set, workspace } = on;
  const { designs } = range;
  const path = ['ranges', at, 'designs'] as const;
  const left = linesLeft(workspace, stallDay.ranges);
  const blockedBy = designs.length >= most ? `${most} designs are the most there can be.` : undefined;
  return (
    <div id={stallFieldId(path)} className={styles.designs}>
      {designs.map((design, place) => (
        <DesignFields
          key={designKey(design)}
          {...{ on, design }}
          path={[...path, place]}
          name={lineNameOf(workspace, design.jobId, design.lineId)}
          onRemove={() => {
            typing.ends();
            set(
              'Remove a design',
              path,
              designs.filter((one) => one !== design),
            );
          }}
        />
      ))}
      {left.length === 0 ? (
        <p className={styles.quiet}>
          Every line of a job made to stock is in the plan. <Link href="/jobs">Begin a job</Link> for a
          further design.
        </p>
      ) : (
        <AddPart
          noun="design"
          blockedBy={blockedBy}
          adders={left.map((line) => ({ label: designChoice(line), make: () => freshDesign(line) }))}
          onAdd={(make) => {
            typing.ends();
            set('Add a design', [...path, designs.length], make(''));
          }}
        />
      )}
      <MadeForOrder {...{ on, blockedBy }} rangeId={range.id} />
    </div>
  );
}

// Helpers

type DesignFieldsProps = Readonly<{
  on: StallOnScreen;
  design: RangeDesign;
  path: readonly (string | number)[];
  /** Null where its job is not here. */
  name: string | null;
  onRemove: () => void;
}>;

function DesignFields({ on: { set, stallDay }, design, path, name, onRemove }: DesignFieldsProps) {
  const { jobId, share, leftoverShare, isLeftOut } = design;
  const called = name ?? 'A design that is not here';
  return (
    <div className={styles.designRow}>
      <p className={styles.name}>{name === null ? called : <Link href={`/jobs/${jobId}`}>{name}</Link>}</p>
      <TextField
        label="Called on the table"
        width="narrow"
        value={design.name}
        {...textLimits(stallDaySchema, ['ranges', 0, 'designs', 0, 'name'])}
        onCommit={(to) => set(`What ${called} is called`, [...path, 'name'], to)}
      />
      <NumberField
        label={`Part of ${called}`}
        id={stallFieldId([...path, 'share'])}
        width="narrow"
        needed
        value={share}
        {...numberLimits(stallDaySchema, ['ranges', 0, 'designs', 0, 'share'])}
        onCommit={(to) => set(`Part of ${called}`, [...path, 'share'], to)}
      />
      <MeasureField
        label="Unsold worth"
        width="narrow"
        kind="share"
        value={leftoverShare}
        {...numberLimits(stallDaySchema, ['ranges', 0, 'designs', 0, 'leftoverShare'])}
        whenEmpty={stallDay.leftoverShare === null ? 'Nothing is told.' : 'As for the whole day.'}
        onCommit={(to) => set(`Unsold worth of ${called}`, [...path, 'leftoverShare'], to)}
      />
      <CheckField
        label="Stays at home"
        checked={isLeftOut}
        onCommit={(to) => set(`${called} stays at home`, [...path, 'isLeftOut'], to)}
      />
      <Button kind="quiet" spoken={`Remove ${called}`} onPress={onRemove}>
        Remove
      </Button>
    </div>
  );
}
