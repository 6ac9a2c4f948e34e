import { heatWords, layoutWords, moreSheetsWords, recipeWords } from '@/app/_words/docket/jobSheetWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { minutesWords } from '@/app/_words/minutesWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { ownEntry } from '@/lib/job/ownEntry';
import type { JobSheetFacts } from '@/lib/jobSheet/jobSheet';
import type { Finding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import styles from './JobSheet.module.css';
import { PressPart } from './PressPart';
import { SheetHead } from './SheetHead';
import { SheetPart } from './SheetPart';
import { Tick, Ticks } from './Ticks';
import { WatchPart } from './WatchPart';

type BenchPageProps = Readonly<{
  input: JobInput;
  facts: JobSheetFacts;
  findings: readonly Finding[];
  context: TextContext;
}>;

/** More prints than this stand in two columns, so that all fit on the page. */
const ONE_COLUMN = 2;

/** The page that lies beside the press, in the order of the work; no cost stands on it. */
export function BenchPage({ input, facts, findings, context }: BenchPageProps) {
  const { job, workshop, blanks } = input;
  const formatter = formatterFor(context);
  const locale = usableLocale(context.locale);
  const paper = workshop.sheets.find(({ id }) => id === job.sheetId);
  const printer = workshop.printers.find(({ id }) => id === job.printerId);
  const mirrored = facts.placements.every(({ placement }) => placement.mirror);
  const more = moreSheetsWords(facts.sheets - facts.goodSheets, facts.tests, formatter);
  const isDense = facts.placements.length > ONE_COLUMN;
  const packagings = [
    ...new Set(
      job.lines.flatMap(
        ({ packagingId }) => workshop.packagings.find(({ id }) => id === packagingId)?.name ?? [],
      ),
    ),
  ];
  const recipes = facts.placements.map(({ placement: { recipe } }) =>
    [heatWords(recipe, formatter), ...recipeWords(recipe, formatter)].join(', '),
  );
  const isOneRecipe = isDense && new Set(recipes).size === 1;
  const hasNames = job.lines.some(({ nameList }) => nameList.trim() !== '');
  const unit = workshop.units.temperature;
  const steps = facts.placements.length;
  return (
    <>
      <SheetHead input={input} kind="Job sheet" figure={formatter.number(facts.pieces)} />
      <SheetPart
        numeral={1}
        heading={`Print ${formatter.count(facts.sheets, 'sheet')}${paper === undefined ? '' : ` of ${paper.name}`}`}
        aside={`${minutesWords(facts.unattendedMinutes, locale)}, unattended`}
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
      <SheetPart
        numeral={2}
        heading="Lay out the blanks"
        aside={`${formatter.number(facts.take)} in all, ${formatter.count(facts.spare, 'spare')}; ${formatter.number(facts.covered * 100, 0)} % sure that no size runs out`}
      >
        {facts.lines.map(({ lineId, name, blankId, sizes }) => (
          <Ticks key={lineId}>
            <Tick>
              <bdi>{facts.lines.length > 1 ? name : (ownEntry(blanks, blankId)?.name ?? name)}</bdi>
            </Tick>
            {sizes.map(({ size, take }) => (
              <Tick key={size}>
                <bdi>{size}</bdi> <strong>{formatter.number(take)}</strong>
              </Tick>
            ))}
          </Ticks>
        ))}
      </SheetPart>
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
        {isOneRecipe && (
          <p className={styles.recipe}>
            <strong>Every print:</strong> {recipes[0]}
          </p>
        )}
      </SheetPart>
      <div className={isDense ? styles.dense : undefined}>
        {facts.placements.map((of, index) => (
          <SheetPart
            key={`${of.lineId} ${of.placement.id}`}
            numeral={4 + index}
            heading={<bdi>{nameOf(job, of.lineId, of.placement.name)}</bdi>}
            aside={workshop.presses.find(({ id }) => id === of.placement.pressId)?.name}
          >
            <PressPart
              input={input}
              of={of}
              isDense={isDense}
              withRecipe={!isOneRecipe}
              formatter={formatter}
            />
          </SheetPart>
        ))}
      </div>
      <WatchPart findings={findings} context={context} />
      <SheetPart numeral={4 + steps} heading="Check, fold, pack">
        <Ticks>
          <Tick>{formatter.number(facts.pieces)} counted by size</Tick>
          {hasNames && <Tick>each name against the list</Tick>}
          {packagings.map((name) => (
            <Tick key={name}>
              <bdi>{name}</bdi>
            </Tick>
          ))}
          <Tick>care card</Tick>
          <Tick>label legible</Tick>
          <Tick>pads wiped, log written</Tick>
        </Ticks>
        <p className={styles.faults}>
          <span>faults, tallied:</span>
          {['ghost', 'specks', 'blur', 'yellow', 'reversed'].map((fault) => (
            <span className={styles.writeIn} key={fault}>
              {fault}
            </span>
          ))}
        </p>
      </SheetPart>
      <p className={styles.foot}>
        <span>good / scrapped, and why</span>
        <span>minutes on the clock</span>
        <span>packed by, date</span>
      </p>
    </>
  );
}

// Helpers

/** A print by its own name; where there are several lines, with what it is pressed on. */
function nameOf(job: JobInput['job'], lineId: string, name: string): string {
  const line = job.lines.find(({ id }) => id === lineId);
  return job.lines.length > 1 && line !== undefined ? `${line.name}: ${name}` : name;
}
