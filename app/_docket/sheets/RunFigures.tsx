'use client';

import { useTextContext } from '@/app/_fields/useTextContext';
import { FigureButton } from '@/app/_trace/FigureButton';
import type { FigureNames } from '@/app/_trace/figureName';
import { TracePanel } from '@/app/_trace/TracePanel';
import { useOpenFigure } from '@/app/_trace/useOpenFigure';
import { volumeWords } from '@/app/_words/docket/sheetWords';
import { wholeJob } from '@/lib/grid/costSheet';
import { expectedSheets } from '@/lib/grid/expectedSheets';
import { inkLost } from '@/lib/grid/inkLost';
import { rollUsed } from '@/lib/grid/rollUsed';
import { formatNumber } from '@/shared/formatNumber';
import styles from './RunFigures.module.css';

/** What the whole run takes: sheets, presses, ink and electricity; each opens to its sum. */
export function RunFigures({ names }: Readonly<{ names: FigureNames }>) {
  const { sheet, input } = names;
  const paper = input.workshop.sheets.find(({ id }) => id === input.job.sheetId);
  const used = paper === undefined ? null : rollUsed(sheet, paper);
  const { locale, units } = useTextContext();
  const opens = useOpenFigure();
  const number = (value: number, maxDecimals = 1) => formatNumber(value, locale, { maxDecimals });
  const volume = (mL: number) => volumeWords(mL, units, locale);
  const figures = [
    {
      rowId: 'sheets',
      name: used === null ? 'Sheets' : 'Roll',
      text: used === null ? number(expectedSheets(sheet), 0) : `${number(used.lengthMm / 1000)} m`,
      says: 'with replacements, rejects and tests',
    },
    {
      rowId: 'presses',
      name: 'Presses',
      text: number(wholeJob(sheet, 'presses')),
      says: 'with spoiled pieces and tests',
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
