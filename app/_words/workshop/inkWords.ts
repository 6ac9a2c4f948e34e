import type { Formatter } from '@/app/_words/formatter';
import { unitWords } from '@/app/_words/unitWords';
import type { Fitted } from '@/lib/ink/record/fitInkRecord';
import type { InkReading, InkWants } from '@/lib/ink/record/readInkRecord';
import { rateInUnit } from '@/lib/job/rateInUnit';
import type { InkPrints, InkRefill } from '@/shared/schemas/entries';
import type { Workshop } from '@/shared/schemas/workshop';
import { usFluidOuncesFromMl } from '@/shared/units';

/** A volume in the maker's own unit. */
function volumeText(mL: number, { units }: Pick<Workshop, 'units'>, formatter: Formatter): string {
  return units.volume === 'floz'
    ? `${formatter.number(usFluidOuncesFromMl(mL), 2)} fl oz`
    : `${formatter.number(mL, 1)} mL`;
}

/** What was poured in; when of the day only where it stands before the day's prints. */
export const refillText = (
  { mL, beforePrints }: InkRefill,
  workshop: Pick<Workshop, 'units'>,
  formatter: Formatter,
): string => `${volumeText(mL, workshop, formatter)}${beforePrints ? ', before the day’s prints' : ''}`;

/** What was printed, in one line. */
export const printsText = (
  { prints, widthMm, heightMm, total, sessions }: InkPrints,
  formatter: Formatter,
): string =>
  `${formatter.count(prints, 'print')}, ${formatter.size(widthMm, heightMm)}, ${formatter.share(total)} of ink, ${formatter.count(sessions, 'session')}`;

/** What a record of ink tells and wants, in sentences; laydown and volumes in the units the maker types them in. */
export function inkWords(
  reading: InkReading,
  workshop: Pick<Workshop, 'units' | 'rates' | 'currency'>,
  formatter: Formatter,
): { readonly told: readonly string[]; readonly wants: readonly string[] } {
  const volume = (mL: number) => volumeText(mL, workshop, formatter);
  const laydownUnit = workshop.rates.laydown?.unit ?? 'mL/in2';
  const laydown = (value: number) =>
    formatter.number(rateInUnit({ value, unit: 'mL/in2' }, laydownUnit), laydownUnit === 'mL/m2' ? 2 : 5);
  const { fit, refills, refilledMl, uncounted } = reading;
  const told: string[] = [];
  if (fit.kind === 'fitted') {
    told.push(
      `${formatter.count(fit.prints, 'print')} between refills took ${volume(refilledMl)}. Where one channel covers fully your printer lays down ${laydown(fit.laydownMlPerIn2.value)} ${unitWords(laydownUnit, workshop.currency)}${rangeText(fit.laydownMlPerIn2, laydown)}.`,
      fit.of === 'both'
        ? `A session takes ${volume(fit.sessionMl.value)} for cleaning${rangeText(fit.sessionMl, volume)}.`
        : `Cleaning is reckoned at ${volume(fit.sessionMl.value)} a session, the figure above: the record cannot tell it from printing yet.`,
      `${formatter.share(fit.cleaningShare)} of the ink went into cleaning; at a small workshop 20 to 60 % is common.`,
    );
  }
  for (const refill of refills.filter(({ isFarOff }) => isFarOff)) {
    const apart = refill.refillMl - (refill.explainedMl ?? 0);
    told.push(
      apart > 0
        ? `The refill of ${formatter.day(refill.day)} is ${volume(apart)} more than its prints explain: a deep clean, or prints that were not noted?`
        : `The refill of ${formatter.day(refill.day)} is ${volume(-apart)} less than its prints would take: was it filled to the mark?`,
    );
  }
  if (uncounted.before > 0)
    told.push(
      `${formatter.count(uncounted.before, 'print')} noted up to the first refill do not count: nobody knows how full the tank was.`,
    );
  if (uncounted.after > 0)
    told.push(
      `${formatter.count(uncounted.after, 'print')} since the last refill will count with the next one.`,
    );
  return { told, wants: reading.wants.map((want) => wantText(want, fit.kind === 'fitted', formatter)) };
}

function wantText({ kind, has, wants }: InkWants, isFitted: boolean, formatter: Formatter): string {
  switch (kind) {
    case 'refills':
      return has === 0
        ? 'Two refills to the same mark are needed before anything can be said: the first only fills the tank.'
        : 'One more refill to the same mark is needed: it tells what was used since the first.';
    case 'prints':
      return `${formatter.number(wants, 0)} prints between refills make it more sure than the typical figure; ${formatter.number(has, 0)} are there.`;
    case 'sessions':
      return isFitted && has >= wants
        ? 'Printing and cleaning go hand in hand so far: refills with few and with many sessions in them would tell the two apart.'
        : `To tell cleaning from printing it takes ${wants} refills with different numbers of sessions; ${has} ${has === 1 ? 'is' : 'are'} there.`;
    default:
      return kind satisfies never;
  }
}

const rangeText = ({ range }: Fitted, write: (value: number) => string): string =>
  range === null
    ? ', as far as one refill can tell'
    : `, most likely between ${write(range.from)} and ${write(range.to)}`;
