import { isHeldBy } from '@/app/_controls/reveal';
import { findingWords } from '@/app/_words/findings/findingWords';
import type { TextContext } from '@/app/_words/formatter';
import { type Finding, isStanding } from '@/shared/finding';
import type { Job } from '@/shared/schemas/job';
import { fieldIdOf } from './fieldId';

/** What the check says of one field, as sentences. */
export interface FieldNotes {
  readonly issue: string | undefined;
  readonly caution: string | undefined;
}

/** A finding that stands at a field of the docket. */
interface Placed {
  readonly id: string;
  readonly finding: Finding;
}

/** @returns what the findings say of a field, and how many stand beneath a place. */
export function fieldNotes(findings: readonly Finding[], job: Job, context: TextContext) {
  const placed = findings.flatMap((finding): readonly Placed[] => {
    const id = finding.severity === 'note' ? null : fieldIdOf(finding.where, job);
    return id === null || finding.waivedBecause !== undefined ? [] : [{ id, finding }];
  });
  const sentence = (found: Placed | undefined) =>
    found === undefined ? undefined : findingWords(found.finding, context).sentence;
  return {
    at: (fieldId: string): FieldNotes => ({
      issue: sentence(placed.find(({ id, finding }) => id === fieldId && isStanding(finding))),
      caution: sentence(placed.find(({ id, finding }) => id === fieldId && !isStanding(finding))),
    }),
    beneath: (fieldId: string) => {
      const here = placed.filter(({ id }) => isHeldBy(id, [fieldId]));
      const stops = here.filter(({ finding }) => isStanding(finding)).length;
      return { stops, cautions: here.length - stops };
    },
  };
}
