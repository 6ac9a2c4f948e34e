import { jobFigures } from '@/lib/costing/jobFigures';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { compareItem, type IssuedItem } from '@/lib/priceLists/compareItem';
import { freezeItem } from '@/lib/priceLists/freezeItem';
import { type BreaksQuestion, breaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import { channelsAnswer } from '@/lib/studies/channels/channelsAnswer';
import { chargesAnswer } from '@/lib/studies/charges/chargesAnswer';
import { type CostCurveQuestion, curveAnswer } from '@/lib/studies/curve/curveAnswer';
import { type GoalSeekQuestion, goalSeekAnswer } from '@/lib/studies/goalSeek/goalSeekAnswer';
import { type LeversQuestion, leversAnswer } from '@/lib/studies/levers/leversAnswer';
import { sheetsAnswer } from '@/lib/studies/sheets/sheetsAnswer';
import { trimAnswer } from '@/lib/studies/sheets/trimAnswer';
import type { PriceListItem } from '@/shared/schemas/priceList';
import type { JobInput } from '@/shared/schemas/request';

/**
 * Everything beside the prices that is too long for the page's thread. Each is a pure function of the documents and
 * perhaps of a question; null while the job cannot be costed.
 */
export const studies = {
  figures: (input: JobInput, grid: Grid) => jobFigures(input, grid),
  sheets: (input: JobInput, grid: Grid) => sheetsAnswer(input, grid),
  curve: (input: JobInput, grid: Grid, question: CostCurveQuestion) => curveAnswer(input, grid, question),
  charges: (input: JobInput, grid: Grid) => chargesAnswer(input, grid),
  channels: (input: JobInput, grid: Grid) => channelsAnswer(input, grid),
  freezeItem: (input: JobInput, grid: Grid, item: PriceListItem) => freezeItem(input, grid, item),
  compareItem: (input: JobInput, grid: Grid, item: IssuedItem) => compareItem(input, grid, item),
  levers: (input: JobInput, grid: Grid, question: LeversQuestion) => leversAnswer(input, grid, question),
  seek: (input: JobInput, grid: Grid, question: GoalSeekQuestion) => goalSeekAnswer(input, grid, question),
  list: (input: JobInput, grid: Grid, question: BreaksQuestion) => breaksAnswer(input, grid, question),
  trim: (input: JobInput, grid: Grid, question: { readonly artworkId: string }) =>
    trimAnswer(input, grid, question),
};

type Studies = typeof studies;

/** Those asked away from the job's own screen, that are to say what it says once it has ended looking for fewer sheets. */
export const thorough: ReadonlySet<StudyName> = new Set(['figures', 'freezeItem', 'compareItem']);

export type StudyName = keyof Studies;

/** What is asked beside the documents; null where a study asks nothing more. Plain data only. */
export type StudyQuestion<Name extends StudyName> =
  Parameters<Studies[Name]> extends [JobInput, Grid, infer Question] ? Question : null;

export type StudyAnswer<Name extends StudyName> = NonNullable<ReturnType<Studies[Name]>>;

/** What the page asks of the study worker. */
export interface StudyRequest {
  readonly name: StudyName;
  readonly input: JobInput;
  readonly question: unknown;
}
