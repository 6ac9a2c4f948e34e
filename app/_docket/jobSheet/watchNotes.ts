import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import { findingWords } from '@/app/_words/findings/findingWords';
import type { TextContext } from '@/app/_words/formatter';
import type { Note } from '@/lib/papers/paper';
import { apart } from '@/lib/papers/words/labelsFor';
import type { Finding } from '@/shared/finding';

/** More cautions than this are counted: the sheet is to stay short. */
const MOST = 5;

/** Of rates, prices and the maker’s own rows: their sentences name amounts, which the bench is not told. */
const OF_MONEY = /^(RATE|ROW)-/;

/** The rule for when to stop, the stops that were passed with their reasons, and what is to be watched. */
export function watchNotes(findings: readonly Finding[], context: TextContext): readonly Note[] {
  const { sameFault, passed, reason, watch, more, ofMoney, nothing } = jobSheetTable;
  const ofBench = findings.filter(({ id }) => !OF_MONEY.test(id));
  const waived = ofBench.flatMap((finding): readonly Note[] =>
    finding.waivedBecause === undefined
      ? []
      : [
          {
            lead: passed,
            text: reason(findingWords(finding, context).sentence, apart(finding.waivedBecause)),
          },
        ],
  );
  const cautions = ofBench.filter(({ severity }) => severity === 'caution');
  const kept = findings.filter(
    ({ id, severity, waivedBecause }) =>
      OF_MONEY.test(id) && (severity === 'caution' || waivedBecause !== undefined),
  );
  const told = [...new Set(cautions.map((finding) => findingWords(finding, context).sentence))];
  const rest = told.length - MOST;
  const said = [
    ...told.slice(0, MOST),
    ...(rest > 0 ? [more(rest)] : []),
    ...(kept.length > 0 ? [ofMoney(kept.length)] : []),
  ];
  return [
    sameFault,
    ...waived,
    ...(said.length === 0 ? [] : [{ lead: watch, text: said.join(' ') }]),
    ...(waived.length === 0 && said.length === 0 ? [nothing] : []),
  ];
}
