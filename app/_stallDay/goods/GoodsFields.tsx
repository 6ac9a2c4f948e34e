'use client';

import { Button } from '@/app/_controls/Button';
import { stallFieldId } from '@/app/_documents/fieldAddress';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { CheckField } from '@/app/_fields/CheckField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { RateField } from '@/app/_fields/RateField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { hasOwnSizes, ownSizesHint, ownSizesLabel } from '@/app/_words/stall/goodsWords';
import { ownPieces } from '@/lib/stall/plan/demand/pastWanted';
import { mostEntries, numberLimits } from '@/shared/limits';
import { type StallRange, stallDaySchema } from '@/shared/schemas/stallDay';
import { ForecastFields } from './ForecastFields';
import styles from './Goods.module.css';
import { sizesOfRange } from './linesOfJobs';
import { RangeFields } from './RangeFields';

const most = mostEntries(stallDaySchema, ['ranges']);

/** What an unsold piece is worth at the next fair. [common practice] */
const LEFTOVER_SHARE = 0.6;

/** Which goods are brought, and how many of them will be asked for. */
export function GoodsFields({ on }: Readonly<{ on: StallOnScreen }>) {
  const { stallDay, set, workspace, before } = on;
  const { ranges, eventFactor, leftoverShare, areOwnSizesLeftOut = false } = stallDay;
  const { past } = before;
  const hasOwn = ranges.some(
    (range) =>
      range.sizes !== null &&
      (range.sizes.ordered !== undefined ||
        hasOwnSizes(ownPieces(ranges, range, past, sizesOfRange(range, workspace)))),
  );
  const add = () => {
    typing.ends();
    const fresh: StallRange = { id: newId(), name: 'Goods', pieces: null, sizes: null, designs: [] };
    set('Add goods', ['ranges', ranges.length], fresh);
  };
  return (
    <>
      <ForecastFields {...{ on, past }} />
      <FieldGroup>
        <NumberField
          label="How special this event is"
          id={stallFieldId(['eventFactor'])}
          width="narrow"
          needed
          value={eventFactor}
          {...numberLimits(stallDaySchema, ['eventFactor'])}
          hint="2 where twice as many will be asked for, 1 where nothing is special."
          onCommit={(to) => set('How special this event is', ['eventFactor'], to)}
        />
        <RateField
          label="What an unsold piece is still worth"
          id={stallFieldId(['leftoverShare'])}
          rate={leftoverShare}
          units={['share']}
          typical={LEFTOVER_SHARE}
          limits={numberLimits(stallDaySchema, ['leftoverShare', 'value'])}
          hint="Share of what it cost."
          whenMissing="Without it nobody can say what bringing too many costs."
          onCommit={(to) => set('What an unsold piece is worth', ['leftoverShare'], to)}
        />
      </FieldGroup>
      <div id={stallFieldId(['ranges'])} className={styles.ranges}>
        {ranges.map((range, at) => (
          <RangeFields key={range.id} {...{ on, range, at, past }} />
        ))}
        {(hasOwn || areOwnSizesLeftOut) && (
          <CheckField
            label={ownSizesLabel}
            hint={ownSizesHint}
            checked={areOwnSizesLeftOut}
            onCommit={(to) => set(ownSizesLabel, ['areOwnSizesLeftOut'], to)}
          />
        )}
        <div>
          <Button
            blockedBy={ranges.length >= most ? `${most} ranges are the most there can be.` : undefined}
            onPress={add}
          >
            Add goods
          </Button>
        </div>
      </div>
    </>
  );
}
