'use client';

import { shortAmount } from '@/app/_words/stall/count/countWords';
import type { Counting } from './useCount';

type SetKeysProps = Readonly<{
  counting: Counting;
  className?: string | undefined;
  /** Of what a set takes off, beneath its name. */
  smallClass?: string | undefined;
}>;

/** Every set that the open ticket completes, each with what it takes off; whoever sells picks one. */
export function SetKeys({ counting, className, smallClass }: SetKeysProps) {
  const { plan, ticket, locale, tap } = counting;
  return ticket.sets.map(({ setId, name, minor, pay }) => (
    <button
      key={setId}
      type="button"
      className={className}
      onClick={() => tap({ what: 'set', setId, minor, pay })}
    >
      {name} <span className={smallClass}>{shortAmount(-minor, plan.currency, locale)}</span>
    </button>
  ));
}
