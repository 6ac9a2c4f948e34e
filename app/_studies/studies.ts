import type { Grid } from '@/lib/grid/evaluateGrid';
import { channelsAnswer } from '@/lib/price/channels/channelsAnswer';
import { chargesAnswer } from '@/lib/price/charges/chargesAnswer';
import { type CurveStudyQuestion, curveAnswer } from '@/lib/price/curve/curveAnswer';
import { type LeversQuestion, leversAnswer } from '@/lib/price/levers/leversAnswer';
import { type ListQuestion, listAnswer } from '@/lib/price/list/listAnswer';
import { compareItem, type IssuedItem } from '@/lib/price/listDocument/compareItem';
import { freezeItem } from '@/lib/price/listDocument/freezeItem';
import { type SeekQuestion, seekAnswer } from '@/lib/price/seek/seekAnswer';
import { sheetsAnswer } from '@/lib/sheets/sheetsAnswer';
import { trimAnswer } from '@/lib/sheets/trimAnswer';
import type { ListItem } from '@/shared/schemas/priceList';
import type { JobInput } from '@/shared/schemas/request';

/**
 * Everything beside the prices that is too long for the page's thread. Each is a pure function of the documents and
 * perhaps of a question; null while the job cannot be costed.
 */
export const studies = {
  sheets: (input: JobInput, grid: Grid) => sheetsAnswer(input, grid),
  curve: (input: JobInput, grid: Grid, question: CurveStudyQuestion) => curveAnswer(input, grid, question),
  charges: (input: JobInput, grid: Grid) => chargesAnswer(input, grid),
  channels: (input: JobInput, grid: Grid) => channelsAnswer(input, grid),
  freezeItem: (input: JobInput, grid: Grid, item: ListItem) => freezeItem(input, grid, item),
  compareItem: (input: JobInput, grid: Grid, item: IssuedItem) => compareItem(input, grid, item),
  levers: (input: JobInput, grid: Grid, question: LeversQuestion) => leversAnswer(input, grid, question),
  seek: (input: JobInput, grid: Grid, question: SeekQuestion) => seekAnswer(input, grid, question),
  list: (input: JobInput, grid: Grid, question: ListQuestion) => listAnswer(input, grid, question),
  trim: (input: JobInput, grid: Grid, question: { readonly artworkId: string }) =>
    trimAnswer(input, grid, question),
};

type Studies = typeof studies;

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
