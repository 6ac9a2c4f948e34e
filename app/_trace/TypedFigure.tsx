'use client';

import { OriginMark } from '@/app/_controls/OriginMark';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import type { FigureRef, Trace } from '@/lib/grid/traceFigure';
import { milesFromKm } from '@/shared/units';
import type { FigureNames } from './figureName';
import { figureWords } from './figureWords';
import { SettingLink } from './SettingLink';
import styles from './TypedFigure.module.css';
import { whereSet } from './whereSet';

type TypedFigureProps = Readonly<{ trace: Trace; names: FigureNames }>;

/** The end of the way down: a value as it was typed, whose it is, since when, and where it is set. */
export function TypedFigure({ trace, names }: TypedFigureProps) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { input } = trace;
  const setting = whereSet(names, trace.ref);
  const counted = input?.origin === 'counted';
  return (
    <div className={styles.typed}>
      <p className={styles.facts}>
        {!counted && <strong>{typedText(trace, context)}</strong>}
        {input !== undefined && input.origin !== 'typed' && input.origin !== 'counted' && (
          <OriginMark origin={input.origin} count={input.count} />
        )}
        {input?.date !== undefined && <span>set on {formatter.day(input.date)}</span>}
        {input?.about !== undefined && <span>{input.about}</span>}
        {counted && input.about === undefined && <span>counted from the job</span>}
      </p>
      {setting !== null && <SettingLink setting={setting} />}
    </div>
  );
}

// Helpers

/** In the unit it was typed in, where the sums use another. */
function typedText({ input, value, unit, ref }: Trace, context: ReturnType<typeof useTextContext>): string {
  if (input?.typed !== undefined) return figureWords(input.typed.value, input.typed.unit, context);
  if (isDistance(ref) && context.units.distance === 'mi')
    return figureWords(milesFromKm(value), 'mi', context);
  return figureWords(value, unit, context);
}

const isDistance = ({ rowId }: FigureRef): boolean => rowId === 'deliveryKm';
