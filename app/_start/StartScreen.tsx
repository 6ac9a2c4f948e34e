'use client';

import { useMemo } from 'react';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { MeasuresContext } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';
import { usableLocale } from '@/app/_words/usableLocale';
import { StartForm } from './StartForm';
import { useStart } from './useStart';

/** The way to a first job of one's own: what is made, on what, and a price at once. */
export function StartScreen() {
  return <WithWorkspace>{(workspace) => <Start workspace={workspace} />}</WithWorkspace>;
}

// Helpers

function Start({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const start = useStart(workspace);
  const { currency, locale, units } = start.choices.region;
  // Fields and figures are those of the place that is chosen here, not yet of the workshop.
  const measures = useMemo(() => ({ currency, units }), [currency, units]);
  return (
    <NumberLocale value={usableLocale(locale)}>
      <MeasuresContext value={measures}>
        <StartForm start={start} />
      </MeasuresContext>
    </NumberLocale>
  );
}
