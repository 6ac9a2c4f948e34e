import { useToday } from '@/app/_clock/useToday';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { runListTable } from '@/app/_words/making/runs/runListTable';
import { nearDayWords } from '@/app/_words/orders/nearDayWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { RunFacts } from '@/lib/making/runFacts';

type RunStateProps = Readonly<{
  facts: RunFacts;
  /** On which it is wanted; null where nobody waits. */
  day: string | null;
  workspace: Pick<ReadyWorkspace, 'workshop'>;
}>;

/** How a run stands, in a few words. */
export function RunState({ facts: { standard, isClosed, isBegun, steps }, day, workspace }: RunStateProps) {
  const today = useToday();
  const locale = usableLocale(workspace.workshop.locale);
  const near = (one: string) => nearDayWords(one, today, locale);
  if (isClosed) {
    const closed = steps.findLast(({ body }) => body.step.what === 'closed')?.body.day;
    return <p>{closed === undefined ? runListTable.closed : `${runListTable.closed} ${near(closed)}`}</p>;
  }
  const begun = standard?.body.issuedOn ?? steps.find(({ body }) => body.step.what === 'begun')?.body.day;
  if (isBegun && begun !== undefined) return <p>{runListTable.begun(near(begun))}</p>;
  return day === null ? null : <p>wanted {near(day)}</p>;
}
