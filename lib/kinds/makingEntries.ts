import { supplyItemLinks } from '@/lib/kinds/supplyItemLinks';
import type { KindDescriptor, Link } from '@/lib/stored/registry';
import { type RateTaken, rateTakenSchema } from '@/shared/schemas/learnedEvents';
import { type PressTest, pressTestSchema, type WashCheck, washCheckSchema } from '@/shared/schemas/pressLog';
import {
  type BlankFault,
  blankFaultSchema,
  type Hours,
  hoursSchema,
  type Pressing,
  pressingSchema,
  type RunActual,
  type RunStep,
  runActualSchema,
  runStepSchema,
  type SheetsPrinted,
  sheetsPrintedSchema,
} from '@/shared/schemas/runEvents';
import {
  type FaultClaim,
  faultClaimSchema,
  type GoodsIn,
  goodsInSchema,
} from '@/shared/schemas/supplyEvents';

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

const pressing: KindDescriptor<Pressing, 'entry'> = {
  ...first,
  word: 'piece pressed',
  schema: pressingSchema,
  linksOf: (body) => [...ofRun(body), { to: 'job', id: body.jobId, path: ['jobId'] }],
};
const blankFault: KindDescriptor<BlankFault, 'entry'> = {
  ...first,
  word: 'faulty blank',
  schema: blankFaultSchema,
  linksOf: ({ runId, blankId }) => [
    ...linkTo('run', runId, ['runId']),
    { to: 'blank', id: blankId, path: ['blankId'] },
  ],
};
const sheetsPrinted: KindDescriptor<SheetsPrinted, 'entry'> = {
  ...first,
  word: 'note of sheets printed',
  schema: sheetsPrintedSchema,
  linksOf: (body) => [...ofRun(body), { to: 'job', id: body.jobId, path: ['jobId'] }],
};
const runActual: KindDescriptor<RunActual, 'entry'> = {
  ...first,
  word: 'figure of a run',
  schema: runActualSchema,
  linksOf: ({ runId }) => [{ to: 'run', id: runId, path: ['runId'] }],
};
const runStep: KindDescriptor<RunStep, 'entry'> = {
  ...first,
  word: 'step of a run',
  schema: runStepSchema,
  linksOf: ofRun,
};
const hours: KindDescriptor<Hours, 'entry'> = {
  ...first,
  word: 'time worked',
  schema: hoursSchema,
  linksOf: (body) =>
    body.for.kind === 'workshop' ? [] : [{ to: body.for.kind, id: body.for.id, path: ['for', 'id'] }],
};
const pressTest: KindDescriptor<PressTest, 'entry'> = {
  ...first,
  word: 'test press',
  schema: pressTestSchema,
  linksOf: ({ runId, jobId, blankId, pressId, artworkId }) => [
    ...linkTo('run', runId, ['runId']),
    ...linkTo('job', jobId, ['jobId']),
    { to: 'blank', id: blankId, path: ['blankId'] },
    { to: 'press', id: pressId, path: ['pressId'] },
    ...linkTo('artwork', artworkId, ['artworkId']),
  ],
};
const washCheck: KindDescriptor<WashCheck, 'entry'> = {
  ...first,
  word: 'wash check',
  schema: washCheckSchema,
  linksOf: ({ testId, blankId, pressId }) => [
    ...linkTo('entry', testId, ['testId']),
    { to: 'blank', id: blankId, path: ['blankId'] },
    { to: 'press', id: pressId, path: ['pressId'] },
  ],
};
const goodsIn: KindDescriptor<GoodsIn, 'entry'> = {
  ...first,
  word: 'delivery of goods',
  schema: goodsInSchema,
  linksOf: ({ supplierId, supplyOrderId, rows }) => [
    ...linkTo('supplier', supplierId, ['supplierId']),
    ...linkTo('paper', supplyOrderId, ['supplyOrderId']),
    ...rows.flatMap(({ item }, at) => supplyItemLinks(item, ['rows', at, 'item'])),
  ],
};
const faultClaim: KindDescriptor<FaultClaim, 'entry'> = {
  ...first,
  word: 'claim for faulty goods',
  schema: faultClaimSchema,
  linksOf: ({ goodsInId, step }) => [
    { to: 'entry', id: goodsInId, path: ['goodsInId'] },
    ...(step.what === 'claimed'
      ? step.rows.flatMap(({ item }, at) => supplyItemLinks(item, ['step', 'rows', at, 'item']))
      : []),
  ],
};
const rateTaken: KindDescriptor<RateTaken, 'entry'> = {
  ...first,
  word: 'measured figure taken over',
  schema: rateTakenSchema,
  // What it was taken into and measured from may be gone; it says all it needs to be taken back.
  linksOf: () => [],
};

/** What is noted of making, of buying for it and of what it taught. */
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
