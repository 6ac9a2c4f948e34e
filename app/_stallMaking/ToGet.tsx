import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Formatter } from '@/app/_words/formatter';
import {
  blanksCostWords,
  blanksNeededWords,
  SPARES_UNKNOWN,
} from '@/app/_words/orders/waits/blanksNeededWords';
import { materialWords } from '@/app/_words/stall/makingWords';
import { blanksNeeded } from '@/lib/orders/bench/blanksNeeded';
import { stallBlanks } from '@/lib/stall/making/stallBlanks';
import styles from './Making.module.css';
import type { Making } from './useMaking';

type ToGetProps = Readonly<{
  workspace: ReadyWorkspace;
  making: Making;
  formatter: Formatter;
  locale: string;
}>;

/** Paper and ink that pressing takes, and the blanks that are to be bought beside those that lie here. */
export function ToGet({ workspace, making: { jobs, answerOf }, formatter, locale }: ToGetProps) {
  const { workshop, blanks, onHand } = workspace;
  const materials = jobs.flatMap(({ designId }) => answerOf(designId)?.materials ?? []);
  const isKnown = materials.length === jobs.length;
  const papers = workshop.sheets.flatMap((sheet) => {
    const own = materials.filter(({ sheetId }) => sheetId === sheet.id);
    if (own.length === 0) return [];
    const sheets = own.reduce((sum, one) => sum + one.sheets, 0);
    const rollMm = own.reduce<number | null>(
      (sum, one) => (one.rollMm === null ? sum : (sum ?? 0) + one.rollMm),
      null,
    );
    return [{ sheet, sheets, rollMm }];
  });
  const inkMl = materials.reduce((sum, one) => sum + one.inkMl, 0);
  const toGet = blanksNeeded({
    ...{ blanks, onHand },
    jobs: jobs.map(({ designId, job }) => ({ id: designId, job })),
    knownOf: (designId) => {
      const known = answerOf(designId);
      return known === null ? null : stallBlanks(known.blanks, known.materials.blanksDrawn);
    },
  });
  const cost = blanksCostWords(toGet, formatter);
  return (
    <>
      <ul className={styles.lines}>
        {isKnown && <li>{materialWords(papers, inkMl, workshop.units, formatter, locale)}</li>}
        {toGet.needed.map((one) => (
          <li key={one.blankId}>{blanksNeededWords(one, formatter)}</li>
        ))}
        {cost !== null && <li>{cost}</li>}
      </ul>
      {!isKnown && <p className={styles.quiet}>{SPARES_UNKNOWN}</p>}
    </>
  );
}
