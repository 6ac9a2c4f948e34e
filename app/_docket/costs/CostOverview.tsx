'use client';

import { useMemo } from 'react';
import { FamilyMark } from '@/app/_controls/FamilyMark';
import { useArrowKeys } from '@/app/_docket/common/useArrowKeys';
import { useTextContext } from '@/app/_fields/useTextContext';
import { FigureButton } from '@/app/_trace/FigureButton';
import type { FigureNames } from '@/app/_trace/figureName';
import { TracePanel } from '@/app/_trace/TracePanel';
import { useOpenFigure } from '@/app/_trace/useOpenFigure';
import { costTaxWords, groupName, percentWords } from '@/app/_words/docket/costWords';
import { pieceWords } from '@/app/_words/docket/pieceWords';
import { withCostGroups } from '@/lib/grid/costGroups';
import { taxTerms } from '@/lib/price/taxTerms';
import type { Line } from '@/shared/schemas/job';
import { CostBar } from './CostBar';
import styles from './CostOverview.module.css';
import { groupMarks } from './costGroupMarks';
import { costOverview } from './costOverview';

type CostOverviewProps = Readonly<{ names: FigureNames; line: Line }>;

/** Where the money of the job goes, in a bar and a few groups, and what one piece of each size costs. */
export function CostOverview({ names, line }: CostOverviewProps) {
  const { sheet, input } = names;
  const { locale } = useTextContext();
  const opens = useOpenFigure();
  const groupKeys = useArrowKeys();
  const eachKeys = useArrowKeys();
  const { groups, total, pieces, each } = costOverview(sheet, line.id, locale);
  const grouped = useMemo(() => ({ input, sheet: withCostGroups(sheet) }), [input, sheet]);
  const piece = pieceWords(input.blanks[line.blankId]);
  const oneGood = [`one good ${piece.one}`, costTaxWords(taxTerms(sheet).inside)].filter(Boolean).join(', ');
  return (
    <>
      <CostBar groups={groups} />
      <div className={styles.columns}>
        <table className={styles.table} {...groupKeys}>
          <caption className="visuallyHidden">Cost of the whole job, {sheet.currency}</caption>
          <colgroup>
            <col />
            <col className={styles.sum} />
            <col className={styles.part} />
          </colgroup>
          <thead className="visuallyHidden">
            <tr>
              <th scope="col">What for</th>
              <th scope="col">Whole job, {sheet.currency}</th>
              <th scope="col">Of the cost</th>
            </tr>
          </thead>
          <tbody>
            {groups.map(({ id, label, rowId, text, percent }) => (
              <tr key={id}>
                <th scope="row">
                  <span className={styles.label}>
                    <FamilyMark {...groupMarks[id]} />
                    {groupName(id, label, sheet, locale)}
                  </span>
                </th>
                <td>
                  <FigureButton figure={{ rowId }} name={`${label}, whole job`} {...{ text, opens }} />
                </td>
                <td className={styles.share}>{percentWords(percent)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">Full cost of {pieces}</th>
              <td>
                <FigureButton
                  figure={{ rowId: 'fullCost' }}
                  name="Full cost, whole job"
                  text={total}
                  strong
                  opens={opens}
                />
              </td>
              <td />
            </tr>
          </tfoot>
        </table>
        <table className={styles.table} {...eachKeys}>
          <caption className={styles.caption}>{oneGood}</caption>
          <tbody>
            {each.map(({ name, figure, text, label }) => (
              <tr key={label}>
                <th scope="row">{label}</th>
                <td>
                  <FigureButton {...{ figure, name, text, opens }} strong />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {opens.open !== null && (
        <TracePanel
          key={opens.buttonId(opens.open)}
          id={opens.panelId}
          names={grouped}
          root={opens.open}
          onClose={opens.close}
        />
      )}
    </>
  );
}
