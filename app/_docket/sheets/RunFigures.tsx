'use client';

import { useTextContext } from '@/app/_fields/useTextContext';
import { FigureButton } from '@/app/_trace/FigureButton';
import type { FigureNames } from '@/app/_trace/figureName';
import { TracePanel } from '@/app/_trace/TracePanel';
import { useOpenFigure } from '@/app/_trace/useOpenFigure';
import { wholeJob } from '@/lib/grid/costSheet';
import { inkLost } from '@/lib/grid/inkLost';
import { formatNumber } from '@/shared/formatNumber';
import { usFluidOuncesFromMl } from '@/shared/units';
import styles from './RunFigures.module.css';

/** What the whole run takes: sheets, presses, ink and electricity; each opens to its sum. */
export function RunFigures({ names }: Readonly<{ names: FigureNames }>) {
  const { sheet, input } = names;
  const isRoll = input.workshop.sheets.find(({ id }) => id === input.job.sheetId)?.form === 'roll';
  const { locale, units } = useTextContext();
  const opens = useOpenFigure();
  const number = (value: number, maxDecimals = 1) => formatNumber(value, locale, { maxDecimals });
  const volume = (mL: number) =>
    units.volume === 'floz' ? `${number(usFluidOuncesFromMl(mL), 2)} fl oz` : `${number(mL)} mL`;
  const figures = [
    {
      rowId: 'sheets',
      name: 'Sheets',
      text: number(wholeJob(sheet, 'sheets')),
      says: isRoll
        ? 'letter sheets of the roll, expected, with replacements, rejects and tests'
        : 'expected, with replacements, rejects and tests',
    },
    {
      rowId: 'presses',
      name: 'Presses',
      text: number(wholeJob(sheet, 'presses')),
      says: 'expected, with spoiled pieces and tests',
    },
    {
      rowId: 'inkMl',
      name: 'Ink',
      text: volume(wholeJob(sheet, 'inkMl')),
      says: `of it ${volume(inkLost(sheet))} lost to cleaning and spray`,
    },
    {
      rowId: 'kwh',
      name: 'Electricity',
      text: `${number(wholeJob(sheet, 'kwh'), 2)} kWh`,
      says: 'presses, warm-up and printer',
    },
  ];
  return (
    <div className={styles.run}>
      <dl className={styles.figures}>
        {figures.map(({ rowId, name, text, says }) => (
          <div className={styles.figure} key={rowId}>
            <dt className={styles.name}>{name}</dt>
            <dd className={styles.value}>
              <FigureButton figure={{ rowId }} name={`${name}, whole job`} text={text} opens={opens} strong />
              <span className={styles.says}>{says}</span>
            </dd>
          </div>
        ))}
      </dl>
      {opens.open !== null && (
        <TracePanel
          key={opens.open.rowId}
          id={opens.panelId}
          names={names}
          root={opens.open}
          onClose={opens.close}
        />
      )}
    </div>
  );
}
