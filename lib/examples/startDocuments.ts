import { freeName } from '@/lib/drafts/freeName';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';
import type { Workshop } from '@/shared/schemas/workshop';
import type { StartingBlankName } from './blankPatterns';
import type { ExampleDocument } from './exampleDocuments';
import { exampleJobIds } from './exampleJobIds';
import { isExampleWorkshop } from './isExampleWorkshop';
import type { StartChoices } from './startChoices';
import { draftIn, type StartDraft, type StartIds, startBlank, startDraft } from './startDraft';

/** What is on the device when a first job is opened. */
export interface FormerDocuments {
  readonly workshop: Workshop;
  readonly blanks: Readonly<Record<string, Blank>>;
  readonly jobs: readonly { readonly id: string; readonly job: Job }[];
  /** The example in the money of the place, where it stands there in another; null where it may stay as it is. */
  readonly exampleAnew: readonly ExampleDocument[] | null;
}

/** @returns the job that the answers come to, as it is priced. */
export function startInput(
  make: StartingBlankName,
  choices: StartChoices,
  day: string,
  former: Pick<FormerDocuments, 'workshop' | 'blanks'>,
  ids: StartIds,
): JobInput {
  const { workshop, blank, artwork, job } = draftOf(make, choices, day, former, ids);
  return {
    asOf: day,
    workshop,
    blanks: { [job.lines[0]?.blankId ?? ids.blank]: blank },
    artworks: { [ids.artwork]: artwork },
    job,
    // Nothing of it is kept yet, so nobody can have counted or approved it.
    onHand: {},
    approvedVersions: {},
  };
}

/**
 * What is written when a first job is opened. The example stays, and its sums with it: its jobs keep the rates and
 * machines they were made with. A workshop that is the maker's own already only gets what it lacks.
 */
export function startDocuments(
  make: StartingBlankName,
  choices: StartChoices,
  day: string,
  former: FormerDocuments,
  ids: StartIds,
): readonly ExampleDocument[] {
  const draft = draftOf(make, choices, day, former, ids);
  const blankId = draft.job.lines[0]?.blankId ?? ids.blank;
  const own: readonly ExampleDocument[] = [
    ...(former.blanks[blankId] === undefined
      ? [{ kind: 'blank', id: blankId, body: draft.blank } as const]
      : []),
    { kind: 'artwork', id: ids.artwork, body: draft.artwork },
    { kind: 'job', id: ids.job, body: draft.job },
  ];
  if (!isExampleWorkshop(former.workshop)) {
    return [{ kind: 'workshop', id: 'workshop', body: draft.workshop }, ...own];
  }
  const anew = former.exampleAnew?.filter(
    ({ kind, id }) => kind !== 'job' || former.jobs.some((job) => job.id === id),
  );
  const example = anew?.flatMap((one) => (one.kind === 'workshop' ? [one.body] : []))[0];
  const jobs = [
    ...former.jobs.filter(({ id }) => anew === undefined || !exampleJobIds.includes(id)),
    ...(anew ?? []).flatMap((one) => (one.kind === 'job' ? [{ id: one.id, job: one.body }] : [])),
  ];
  const shops = example === undefined ? [former.workshop] : [example, former.workshop];
  return [
    {
      kind: 'workshop',
      id: 'workshop',
      body: withParts(
        draft.workshop,
        shops,
        jobs.map(({ job }) => job),
      ),
    },
    ...(anew ?? []).filter(({ kind }) => kind !== 'workshop' && kind !== 'job'),
    ...jobs.map(({ id, job }): ExampleDocument => {
      const shop = example !== undefined && exampleJobIds.includes(id) ? example : former.workshop;
      return { kind: 'job', id, body: withRatesOf(job, shop) };
    }),
    ...own,
  ];
}

function draftOf(
  make: StartingBlankName,
  choices: StartChoices,
  day: string,
  { workshop, blanks }: Pick<FormerDocuments, 'workshop' | 'blanks'>,
  ids: StartIds,
): StartDraft {
  if (isExampleWorkshop(workshop)) return startDraft(make, choices, day, ids);
  const fresh = startDraft(make, choices, day, ids).workshop;
  const [press] = fresh.presses;
  const [sheet] = fresh.sheets;
  if (press === undefined || sheet === undefined) throw new RangeError('a start has a press and a sheet');
  const presses = withPart(
    workshop.presses,
    press,
    (one) => one.kind === press.kind && platenSize(one) === platenSize(press),
  );
  const sheets = withPart(workshop.sheets, sheet, (one) => sizeOf(one) === sizeOf(sheet));
  const wanted = startBlank(make, choices, day, press);
  const [blankId, blank] = Object.entries(blanks).find(([, one]) => one.name === wanted.name) ?? [
    ids.blank,
    wanted,
  ];
  const room = choices.isAired === null ? workshop.room : { ...workshop.room, ventilated: choices.isAired };
  const circuit =
    choices.hasOwnCircuit === true && workshop.circuit === null ? fresh.circuit : workshop.circuit;
  return draftIn(
    { ...workshop, presses: presses.parts, sheets: sheets.parts, room, circuit },
    blank,
    choices,
    day,
    { ...ids, blank: blankId },
    { pressId: presses.id, sheetId: sheets.id },
  );
}

const platenSize = ({ platen }: Workshop['presses'][number]) =>
  platen === null ? '' : `${Math.round(platen.widthMm)} ${Math.round(platen.heightMm)}`;

const sizeOf = ({ form, widthMm, heightMm }: Workshop['sheets'][number]) =>
  // A roll is the same paper however long its prints may be.
  `${form} ${Math.round(widthMm)} ${form === 'roll' ? '' : Math.round(heightMm)}`;

/** The part a list has already, else the list with it at its end. */
function withPart<Part extends { readonly id: string; readonly name: string }>(
  parts: Part[],
  wanted: Part,
  isAlike: (part: Part) => boolean,
): { readonly parts: Part[]; readonly id: string } {
  const found = parts.find(isAlike);
  if (found !== undefined) return { parts, id: found.id };
  const id = freeName(
    wanted.id,
    parts.map((part) => part.id),
  ).replaceAll(' ', '-');
  const name = freeName(
    wanted.name,
    parts.map((part) => part.name),
  );
  return { parts: [...parts, { ...wanted, id, name }], id };
}

/** The own parts first, then those of former workshops that jobs stand on. */
function withParts(own: Workshop, shops: readonly Workshop[], jobs: readonly Job[]): Workshop {
  const lines = jobs.flatMap((job) => job.lines);
  const placements = lines.flatMap((line) => line.placements);
  const used = {
    printers: jobs.map(({ printerId }) => printerId),
    presses: placements.map(({ pressId }) => pressId),
    sheets: jobs.map(({ sheetId }) => sheetId),
    packagings: lines.map(({ packagingId }) => packagingId),
    channels: jobs.map(({ channelId }) => channelId),
  };
  const kept = <Part extends { readonly id: string; readonly name: string }>(
    mine: readonly Part[],
    theirs: readonly Part[],
    ids: readonly (string | null)[],
  ): Part[] => {
    const all = [...mine];
    for (const part of theirs) {
      if (!ids.includes(part.id) || all.some(({ id }) => id === part.id)) continue;
      all.push({
        ...part,
        name: freeName(
          part.name,
          all.map(({ name }) => name),
        ),
      });
    }
    return all;
  };
  const former = shops[shops.length - 1];
  return {
    ...own,
    printers: kept(
      own.printers,
      shops.flatMap(({ printers }) => printers),
      used.printers,
    ),
    presses: kept(
      own.presses,
      shops.flatMap(({ presses }) => presses),
      used.presses,
    ),
    sheets: kept(
      own.sheets,
      shops.flatMap(({ sheets }) => sheets),
      used.sheets,
    ),
    packagings: kept(
      own.packagings,
      shops.flatMap(({ packagings }) => packagings),
      used.packagings,
    ),
    channels: kept(
      own.channels,
      shops.flatMap(({ channels }) => channels),
      used.channels,
    ),
    // What the maker has written down in the meantime is theirs.
    ownRows: former?.ownRows ?? own.ownRows,
  };
}

/** A job that goes on with the rates of the workshop it was made in. */
function withRatesOf(job: Job, { rates }: Workshop): Job {
  const known = Object.entries(rates).filter(([, rate]) => rate !== null);
  return { ...job, rates: { ...Object.fromEntries(known), ...job.rates } };
}
