import Link from 'next/link';
import { makeItWords } from '@/app/_words/making/runs/makeItWords';
import type { Run, RunWork } from '@/shared/schemas/making/run';

type MakeItProps = Readonly<{
  /** Every run by its id. */
  runs: Readonly<Record<string, Run>>;
  /** What is to be made. */
  of: { readonly kind: 'order' | 'day'; readonly id: string };
}>;

/** Leads from an order or a stall day to the run that makes it, or to a new one that begins with it. */
export function MakeIt({ runs, of }: MakeItProps) {
  const isOf = ({ orderId, stallDayId }: RunWork) => (of.kind === 'order' ? orderId : stallDayId) === of.id;
  const own = Object.entries(runs).filter(
    ([, { archivedOn, works }]) => archivedOn === null && works.some(isOf),
  );
  return (
    <p>
      {own.length === 0 ? (
        <Link href={`/making#${of.kind}-${of.id}`}>{makeItWords.plan}</Link>
      ) : (
        own.map(([id, { name }], at) => (
          <span key={id}>
            {at > 0 && ', '}
            <Link href={`/making/${id}`}>
              <bdi>{makeItWords.to(name)}</bdi>
            </Link>
          </span>
        ))
      )}
    </p>
  );
}
