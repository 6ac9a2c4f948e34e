import { supplyItemLinks } from '@/lib/kinds/supplyItemLinks';
import type { KindFacts, Link } from '@/lib/stored/registry';
import type { RateTaken } from '@/shared/schemas/making/learnedEvents';
import type { PressTest, WashCheck } from '@/shared/schemas/making/pressLog';
import type {
  BlankFault,
  Hours,
  Pressing,
  RunActual,
  RunStep,
  SheetsPrinted,
} from '@/shared/schemas/making/runEvents';
import type { FaultClaim, GoodsIn } from '@/shared/schemas/making/supplyEvents';

const first = { nature: 'entry', version: 1, steps: {} } as const;

const linkTo = (to: string, id: string | null, path: Link['path']): readonly Link[] =>
  id === null ? [] : [{ to, id, path }];

const ofRun = ({
  runId,
  standardId,
}: {
  readonly runId: string;
  readonly standardId: string | null;
}): readonly Link[] => [
  { to: 'run', id: runId, path: ['runId'] },
  ...linkTo('paper', standardId, ['standardId']),
];

const pressing: KindFacts<Pressing, 'entry'> = {
  ...first,
  word: 'piece pressed',
  linksOf: (body) => [...ofRun(body), { to: 'job', id: body.jobId, path: ['jobId'] }],
};
const blankFault: KindFacts<BlankFault, 'entry'> = {
  ...first,
  word: 'faulty blank',
  linksOf: ({ runId, blankId }) => [
    ...linkTo('run', runId, ['runId']),
    { to: 'blank', id: blankId, path: ['blankId'] },
  ],
};
const sheetsPrinted: KindFacts<SheetsPrinted, 'entry'> = {
  ...first,
  word: 'note of sheets printed',
  linksOf: (body) => [...ofRun(body), { to: 'job', id: body.jobId, path: ['jobId'] }],
};
const runActual: KindFacts<RunActual, 'entry'> = {
  ...first,
  word: 'figure of a run',
  linksOf: ({ runId }) => [{ to: 'run', id: runId, path: ['runId'] }],
};
const runStep: KindFacts<RunStep, 'entry'> = {
  ...first,
  word: 'step of a run',
  linksOf: ofRun,
};
const hours: KindFacts<Hours, 'entry'> = {
  ...first,
  word: 'time worked',
  linksOf: (body) =>
    body.for.kind === 'workshop' ? [] : [{ to: body.for.kind, id: body.for.id, path: ['for', 'id'] }],
};
const pressTest: KindFacts<PressTest, 'entry'> = {
  ...first,
  word: 'test press',
  linksOf: ({ runId, jobId, blankId, pressId, artworkId }) => [
    ...linkTo('run', runId, ['runId']),
    ...linkTo('job', jobId, ['jobId']),
    { to: 'blank', id: blankId, path: ['blankId'] },
    { to: 'press', id: pressId, path: ['pressId'] },
    ...linkTo('artwork', artworkId, ['artworkId']),
  ],
};
const washCheck: KindFacts<WashCheck, 'entry'> = {
  ...first,
  word: 'wash check',
  linksOf: ({ testId, blankId, pressId }) => [
    ...linkTo('entry', testId, ['testId']),
    { to: 'blank', id: blankId, path: ['blankId'] },
    { to: 'press', id: pressId, path: ['pressId'] },
  ],
};
const goodsIn: KindFacts<GoodsIn, 'entry'> = {
  ...first,
  word: 'delivery of goods',
  linksOf: ({ supplierId, supplyOrderId, rows }) => [
    ...linkTo('supplier', supplierId, ['supplierId']),
    ...linkTo('paper', supplyOrderId, ['supplyOrderId']),
    ...rows.flatMap(({ item }, at) => supplyItemLinks(item, ['rows', at, 'item'])),
  ],
};
const faultClaim: KindFacts<FaultClaim, 'entry'> = {
  ...first,
  word: 'claim for faulty goods',
  linksOf: ({ goodsInId, step }) => [
    { to: 'entry', id: goodsInId, path: ['goodsInId'] },
    ...(step.what === 'claimed'
      ? step.rows.flatMap(({ item }, at) => supplyItemLinks(item, ['step', 'rows', at, 'item']))
      : []),
  ],
};
const rateTaken: KindFacts<RateTaken, 'entry'> = {
  ...first,
  word: 'measured figure taken over',
  // What it was taken into and measured from may be gone; it says all it needs to be taken back.
  linksOf: () => [],
};

/** What is noted of making, of buying for it and of what it taught; schemas in `rareSchemas.ts`. */
export const makingEntries = {
  pressing,
  blankFault,
  sheetsPrinted,
  runActual,
  runStep,
  hours,
  pressTest,
  washCheck,
  goodsIn,
  faultClaim,
  rateTaken,
} as const;
