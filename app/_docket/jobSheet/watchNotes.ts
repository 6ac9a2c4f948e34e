import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import { findingWords } from '@/app/_words/findings/findingWords';
import type { TextContext } from '@/app/_words/formatter';
import type { Note } from '@/lib/papers/paper';
import { apart } from '@/lib/papers/words/labelsFor';
import type { Finding } from '@/shared/finding';

/** More cautions than this are counted: the sheet is to stay short. */
const MOST = 5;

/** The rule for when to stop, the stops that were passed with their reasons, and what is to be watched. */
export function watchNotes(findings: readonly Finding[], context: TextContext): readonly Note[] {
  const { sameFault, passed, reason, watch, more, nothing } = jobSheetTable;
  const waived = findings.flatMap((finding): readonly Note[] =>
    finding.waivedBecause === undefined
      ? []
      : [
          {
            lead: passed,
            text: reason(findingWords(finding, context).sentence, apart(finding.waivedBecause)),
          },
        ],
  );
  const cautions = findings.filter(({ severity }) => severity === 'caution');
  const told = [...new Set(cautions.map((finding) => findingWords(finding, context).sentence))];
  const rest = told.length - MOST;
  return [
    sameFault,
    ...waived,
    ...(told.length === 0
      ? []
      : [{ lead: watch, text: [...told.slice(0, MOST), ...(rest > 0 ? [more(rest)] : [])].join(' ') }]),
    ...(waived.length === 0 && told.length === 0 ? [nothing] : []),
  ];
}
