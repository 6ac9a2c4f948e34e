import { useEffect, useMemo, useState } from 'react';

type Steps<Of> = Generator<undefined, Of, undefined>;

/**
 * Reckons something that comes with stops between: in one go, or one stop a turn so that the page answers meanwhile. What
 * was reckoned before stays until the newer is done.
 *
 * @param begin null where it cannot be reckoned yet
 */
export function useInTurns<Of>(begin: () => Steps<Of> | null, isLong: boolean): Of | null {
  const atOnce = useMemo(() => (isLong ? null : atEnd(begin())), [begin, isLong]);
  const [later, setLater] = useState<Of | null>(null);
  useEffect(() => {
    const steps = isLong ? begin() : null;
    if (steps === null) return undefined;
    let timer = setTimeout(function go() {
      const step = steps.next();
      if (step.done) setLater(step.value);
      else timer = setTimeout(go);
    });
    return () => clearTimeout(timer);
  }, [begin, isLong]);
  return isLong ? later : atOnce;
}

// Helpers

function atEnd<Of>(steps: Steps<Of> | null): Of | null {
  if (steps === null) return null;
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}
