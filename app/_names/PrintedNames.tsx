'use client';

import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { jobListWords, printedOtherwiseWords } from '@/app/_words/names/namesAnswerWords';
import { nameListDifferences, namesOfList, rowsOfNameList } from '@/lib/names/nameListText';
import styles from './Names.module.css';
import type { NamesWorkspace } from './namesWorkspace';
import { type NamedLine, namesEdits, printedNames } from './orderNames';

type PrintedNamesProps = Readonly<{ workspace: NamesWorkspace; orderId: string; named: NamedLine }>;

/** Told where the job prints other names than the order has: one of the two lists is old. */
export function PrintedNames({ workspace, orderId, named }: PrintedNamesProps) {
  const formatter = formatterFor(useTextContext());
  const { line, rows } = named;
  if (printedNames(named) !== 'others') return null;
  const takeList = () => {
    const next = rowsOfNameList(line.nameList, rows, newId);
    workspace.edit(
      `Names of ${line.name} as the job prints them`,
      namesEdits(orderId, named, () => next),
    );
  };
  return (
    <div className={styles.difference}>
      <Advice severity={rows.length === 0 ? 'note' : 'caution'}>
        {rows.length === 0
          ? jobListWords(namesOfList(line.nameList).length, formatter)
          : printedOtherwiseWords(nameListDifferences(line.nameList, rows))}
      </Advice>
      <div className={styles.ways}>
        {rows.length > 0 && (
          <Button
            onPress={() =>
              workspace.edit(
                `Print the names of ${line.name}`,
                namesEdits(orderId, named, (now) => now, { isPrinted: true }),
              )
            }
          >
            Print the names here
          </Button>
        )}
        <Button kind={rows.length > 0 ? 'quiet' : 'plain'} onPress={takeList}>
          Take the job’s names here
        </Button>
      </div>
    </div>
  );
}
