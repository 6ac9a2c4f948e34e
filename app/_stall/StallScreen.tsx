'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import { Disclosure } from '@/app/_controls/Disclosure';
import sheet from '@/app/_controls/ListSheet.module.css';
import { PageHead } from '@/app/_controls/PageHead';
import { newId } from '@/app/_documents/newId';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { closeInForce } from '@/lib/stall/closeInForce';
import { copiedStallDay, freshStallDay } from '@/lib/stall/days/newStallDay';
import { type StallDayRow, stallCalendar } from '@/lib/stall/days/stallCalendar';
import { NewStallDay, type StallDayBegun } from './NewStallDay';
import { StallDayLine } from './StallDayLine';

/** Every stall day: those to come with what is due for each, those that are over, those put away. */
export function StallScreen() {
  return <WithWorkspace>{(workspace) => <StallDays workspace={workspace} />}</WithWorkspace>;
}

// Helpers

function StallDays({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const router = useRouter();
  const today = useToday();
  const { stallDays, workshop } = workspace;
  const [isNew, setNew] = useState(false);
  const closeOf = (id: string) => closeInForce(workspace.papers.dayClose, id)?.body ?? null;
  const { coming, over, putAway } = stallCalendar(stallDays, today, (id) => closeOf(id) !== null);
  const formatter = formatterFor(workshop);
  const begin = ({ name, day, copyOf }: StallDayBegun) => {
    const id = newId();
    const from = copyOf === null ? undefined : stallDays[copyOf];
    const at = { name, day, dayId: newId() };
    const made =
      copyOf === null || from === undefined
        ? freshStallDay(at, workshop, today)
        : copiedStallDay(at, { id: copyOf, stallDay: from });
    if (workspace.addStallDay(id, made).state === 'shown') router.push(`/stall/${id}`);
  };
  const list = (rows: readonly StallDayRow[]) => (
    <ul className={sheet.list}>
      {rows.map((row) => (
        <StallDayLine key={row.id} row={row} close={closeOf(row.id)} {...{ today, workspace }} />
      ))}
    </ul>
  );
  return (
    <>
      <PageHead
        title="Stall days"
        line="Fairs and markets: what to bring, what is due, what came of it."
        aside={
          <div className={sheet.ends}>
            <ButtonLink href="/stall/shops">Shops on consignment</ButtonLink>
            <Button kind="strong" expanded={isNew} onPress={() => setNew(!isNew)}>
              New stall day
            </Button>
          </div>
        }
      />
      {isNew && (
        <NewStallDay earlier={[...coming, ...over, ...putAway]} onAdd={begin} onLeave={() => setNew(false)} />
      )}
      <UnreadableRecords
        workspace={{
          ...workspace,
          unreadable: workspace.unreadable.filter(({ kind }) => kind === 'stallDay'),
        }}
        level={2}
      />
      <div className={sheet.card}>
        <section aria-labelledby="stall-coming">
          <h2 className={sheet.heading} id="stall-coming">
            Coming
          </h2>
          {coming.length === 0 ? (
            <p className={sheet.none}>
              No stall day ahead. Note the next fair: this page then says what to apply for, pay and bring.
            </p>
          ) : (
            list(coming)
          )}
        </section>
        {over.length > 0 && (
          <section aria-labelledby="stall-over">
            <h2 className={sheet.heading} id="stall-over">
              Over
            </h2>
            {list(over)}
          </section>
        )}
        {putAway.length > 0 && (
          <div className={sheet.fold}>
            <Disclosure
              id="stall-put-away"
              level={2}
              heading={`${formatter.count(putAway.length, 'stall day')} put away`}
            >
              {list(putAway)}
            </Disclosure>
          </div>
        )}
      </div>
    </>
  );
}
