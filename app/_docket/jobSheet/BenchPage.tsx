import type { ArtworkPreviews } from '@/app/_docket/common/useArtworkPreviews';
import {
  heatWords,
  layoutWords,
  moreSheetsWords,
  recipeWords,
  toPrintWords,
} from '@/app/_words/docket/jobSheetWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { JobSheetFacts } from '@/lib/jobSheet/jobSheet';
import type { Finding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { BlanksPart } from './BlanksPart';
import styles from './JobSheet.module.css';
import { PackPart } from './PackPart';
import { PressPart } from './PressPart';
import { SheetHead } from './SheetHead';
import { SheetPart } from './SheetPart';
import { Tick, Ticks } from './Ticks';
import { WatchPart } from './WatchPart';

type BenchPageProps = Readonly<{
  input: JobInput;
  facts: JobSheetFacts;
  findings: readonly Finding[];
  previews: ArtworkPreviews;
  context: TextContext;
}>;

/** More prints than this stand in two columns, so that all fit on the page. */
const ONE_COLUMN = 2;

/** The page that lies beside the press, in the order of the work; no cost stands on it. */
export function BenchPage({ input, facts, findings, previews, context }: BenchPageProps) {
  const { job, workshop } = input;
  const formatter = formatterFor(context);
  const locale = usableLocale(context.locale);
  const paper = workshop.sheets.find(({ id }) => id === job.sheetId);
  const printer = workshop.printers.find(({ id }) => id === job.printerId);
  const mirrored = facts.placements.every(({ placement }) => placement.mirror);
  const more =
    facts.rollMm === null ? moreSheetsWords(facts.sheets - facts.goodSheets, facts.tests, formatter) : null;
  const isDense = facts.placements.length > ONE_COLUMN;
  const ways = facts.placements.map(({ placement: { recipe, pressId } }) =>
    [
      heatWords(recipe, formatter),
      ...recipeWords(recipe, formatter),
      workshop.presses.find(({ id }) => id === pressId)?.name ?? 'no press',
    ].join(', '),
  );
  const isOneWay = isDense && new Set(ways).size === 1;
  const unit = workshop.units.temperature;
  const minutes = `${minutesWords(facts.unattendedMinutes, locale)}, unattended`;
  return (
    <>
      <SheetHead input={input} kind="Job sheet" figure={formatter.number(facts.pieces)} />
      <SheetPart
        numeral={1}
        heading={`Print ${toPrintWords(facts.sheets, facts.rollMm, formatter)}`}
        aside={paper === undefined ? minutes : `${paper.name}; ${minutes}`}
      >
        <Ticks>
          <Tick>nozzle check</Tick>
          <Tick>coated side {printer?.printedSide ?? 'checked'}</Tick>
          <Tick>
            <strong>{mirrored ? 'mirrored' : 'mirrored where the print says so'}</strong>
          </Tick>
          {facts.placements.map(({ lineId, placement, prints }) => (
            <Tick key={`${lineId} ${placement.id}`}>
              {layoutWords(nameOf(job, lineId, placement.name), prints, formatter)}
            </Tick>
          ))}
          {more !== null && <Tick>{more}</Tick>}
          <Tick>dry, trimmed</Tick>
        </Ticks>
      </SheetPart>
      <BlanksPart input={input} facts={facts} formatter={formatter} />
      <SheetPart
        numeral={3}
        heading="Warm up and test on scrap"
        aside={`${minutesWords(facts.attendedMinutes, locale)} of your time in the whole job`}
      >
        <Ticks>
          <Tick>press measured ____ °{unit}</Tick>
          {Array.from({ length: Math.min(facts.tests, 4) }, (_, index) => `test ${index + 1}`).map((test) => (
            <Tick key={test}>{test}</Tick>
          ))}
          <Tick>first good one signed ________</Tick>
        </Ticks>
        {isOneWay && (
          <p className={styles.recipe}>
            <strong>Every print:</strong> {ways[0]}
          </p>
        )}
      </SheetPart>
      <div className={isDense ? styles.dense : undefined}>
        {facts.placements.map((of, index) => (
          <SheetPart
            key={`${of.lineId} ${of.placement.id}`}
            numeral={4 + index}
            heading={<bdi>{nameOf(job, of.lineId, of.placement.name)}</bdi>}
            aside={
              isOneWay ? undefined : workshop.presses.find(({ id }) => id === of.placement.pressId)?.name
            }
          >
            <PressPart {...{ input, of, isDense, previews, formatter }} withRecipe={!isOneWay} />
          </SheetPart>
        ))}
      </div>
      <WatchPart findings={findings} context={context} />
      <PackPart input={input} numeral={4 + facts.placements.length} pieces={formatter.number(facts.pieces)} />
      <p className={styles.foot}>
        <span>good / scrapped, and why</span>
        <span>minutes on the clock</span>
        <span>packed by, date</span>
      </p>
    </>
  );
}

// Helpers

/** A print by its own name; where there are several lines, with what it is pressed on, by that alone where it is its only print. */
function nameOf(job: JobInput['job'], lineId: string, name: string): string {
  const line = job.lines.find(({ id }) => id === lineId);
  if (job.lines.length === 1 || line === undefined) return name;
  return line.placements.length === 1 ? line.name : `${line.name}: ${name}`;
}
