import { describe, expect, it } from 'vitest';
import { findingWords } from '@/app/_words/findings/findingWords';
import { fixLabels } from '@/app/_words/findings/fixWords';
import { checkJob } from '@/lib/check/checkJob';
import type { CostFacts } from '@/lib/check/costFacts';
import { checkOrder } from '@/lib/check/order/checkOrder';
import { reviewCosts } from '@/lib/check/reviewCosts';
import { makeFinding } from '@/lib/findings/makeFinding';
import { formulaFindings } from '@/lib/grid/rowFindings';
import { checkRun } from '@/lib/making/check/checkRun';
import { planRun } from '@/lib/making/planRun';
import { checkStallDay } from '@/lib/stall/check/checkStallDay';
import { addDays } from '@/shared/days';
import type { Finding } from '@/shared/finding';
import type { Picture } from '@/shared/schemas/picture';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import { type FindingId, findingIds } from '@/shared/tables/findingIds';
import { aPicture } from '@/tests/fixtures/aPicture';
import { clubWork, looseWork } from '@/tests/fixtures/benchWork';
import { blocksOf } from '@/tests/fixtures/blocksOf';
import { club, clubWith, mugsWith, TODAY } from '@/tests/fixtures/clubJob';
import { jobsOf, ownBlock, runAsked } from '@/tests/fixtures/clubRun';
import { factsGiven, factsUsed } from '@/tests/fixtures/factsUsed';
import { findingSamples } from '@/tests/fixtures/findingSamples/findingSamples';

const inches = {
  locale: 'en-US',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
} as const;
const metric = {
  locale: 'de-DE',
  currency: 'EUR',
  units: { length: 'mm', temperature: 'C', pressure: 'bar', volume: 'mL', distance: 'km' },
} as const;

const facts: CostFacts = {
  attendedMinutes: 3000,
  benchMinutes: 3000,
  work: looseWork(3000),
  sheets: 53,
  cases: [{ lineId: 'shirts', size: 'L', price: 3, outOfPocketFloor: 6.5, fullCost: 11, fees: 0 }],
  placements: [
    { lineId: 'shirts', placementId: 'badge', print: 0, perSheet: 4, pieces: 37, sheets: 10, spare: 3 },
  ],
  suggested: [{ lineId: 'shirts', askedPrice: 16, upCharges: [] }],
  lying: [],
  pressOrders: [{ lineId: 'shirts', cheaperOrder: ['badge', 'back'], saving: 1.2 }],
  ownPrices: [],
  breakPrices: [],
};

function ofRun(fields: Readonly<Record<string, unknown>>): readonly Finding[] {
  const asked = runAsked(fields);
  const plan = planRun(asked);
  return checkRun({
    ...{ runId: 'run', run: asked.run, jobs: jobsOf(asked), isBegun: false, kept: [] },
    plan: plan.kind === 'planned' ? plan.plan : null,
  });
}

function reviewed(fields: Record<string, unknown>, changes: Partial<CostFacts> = {}): readonly Finding[] {
  const { checked } = checkJob(clubWith(fields));
  return checked === null ? [] : reviewCosts(checked, { ...facts, ...changes });
}

const yours = (value: number, unit: string, date = TODAY) => ({ value, unit, date, origin: 'yours' });
const pure = (fibre: string, share = 1) => ({
  'blank:white-shirt.fibres': [
    { fibre, share },
    { fibre: 'cotton', share: 1 - share },
  ],
});
const colour = (L: number) => ({ 'blank:white-shirt.colour': { name: 'grey', L, a: 0, b: 0 } });
const recipe = (field: string, value: unknown) => ({
  [`job.lines.0.placements.0.recipe.${field}`]: value,
  [`job.lines.0.placements.1.recipe.${field}`]: value,
});
const heat = (value: number, unit: string) => recipe('temperature', { value, unit });
const print = (widthMm: number, heightMm: number) => ({
  'job.lines.0.placements.0.prints': [{ sizes: null, widthMm, heightMm }],
});

const onRoll = (fields: Readonly<Record<string, unknown>>) => ({
  'workshop.sheets.0.form': 'roll',
  ...Object.fromEntries(Object.entries(fields).map(([key, value]) => [`workshop.sheets.0.${key}`, value])),
});
const finest = (parts: Readonly<Record<string, unknown>>) => ({
  'artwork:hill-path.finest': {
    atWidthMm: 203.2,
    capHeightMm: null,
    lineMm: null,
    reversed: false,
    ...parts,
  },
});
const wrapped = (circumferenceMm: number, taperDegrees: number) => ({
  'job.lines.0.placements.0.position': 'wrap',
  'blank:white-shirt.sizes.0.wrap': { circumferenceMm, handleGapMm: 0, taperDegrees },
});

const read = (fields: Partial<Picture>) => ({
  'artwork:hill-path.picture': aPicture(fields),
  'artwork:hill-path.coverage': null,
});

const traits = (fields: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(
    Object.entries(fields).map(([key, value]) => [`blank:white-shirt.traits.${key}`, value]),
  );
const habits = (fields: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(Object.entries(fields).map(([key, value]) => [`workshop.habits.${key}`, value]));
const steps = (field: string, value: unknown) => recipe(`steps.${field}`, value);
const noTest = { 'job.lines.0.placements.0.testPresses': 0 };
const drop = (mm: number) => ({ 'job.lines.0.placements.0.dropFromCollarMm': mm });
const badge = (mm: number) => ({
  'job.lines.0.placements.1.prints': [{ sizes: null, widthMm: mm, heightMm: mm }],
});

/** Jobs that between them bring every rule to speak, in most of its ways. */
const troubled: readonly Record<string, unknown>[] = [
  {},
  pure('polyester', 0.3),
  pure('polyester', 0.6),
  pure('polyester', 0.8),
  { 'blank:white-shirt.fibres': [] },
  {
    'blank:white-shirt.fibres': [
      { fibre: 'polyester', share: 0.96 },
      { fibre: 'cotton', share: 0.2 },
    ],
  },
  { 'blank:white-shirt.fibres': [{ fibre: 'cotton', share: 1 }] },
  read({
    edgeWidthPx: 4.2,
    background: { rgb: [200, 30, 30], ink: 1.1, prints: true },
    softShare: 0.1,
    colourTag: 'untagged',
    liveFonts: ['Futura'],
    heavyShare: 0.2,
  }),
  read({ format: 'jpeg', paleShare: 0.1, heavyShare: 0.6, colourTag: 'profile', profile: 'unreadable' }),
  { ...read({ enclosedWhiteShare: 0.1 }), ...colour(86) },
  colour(50),
  colour(80),
  colour(86),
  { 'blank:white-shirt.maxTemperatureC': 190 },
  { 'blank:white-shirt.maxTemperatureC': 200 },
  { 'job.lines.0.placements.0.raisedParts': 'insidePrint' },
  { ...recipe('reliefFromRaisedParts', false) },
  { 'artwork:hill-path.pixels': { width: 100, height: 120 } },
  { 'artwork:hill-path.pixels': { width: 1000, height: 1200 } },
  { 'job.lines.0.placements.0.fit': 'stretch' },
  { 'job.lines.0.placements.0.fit': 'fill' },
  { 'artwork:hill-path.coverage': { kind: 'total', total: 2.8 } },
  { 'artwork:hill-path.coverage': { kind: 'total', total: 3.8 } },
  { 'job.lines.0.placements.0.mirror': false, 'artwork:club-crest.mirrored': true },
  { 'approval:hill-path': 2 },
  { 'artwork:hill-path.colourMatch': 'wanted' },
  { 'job.lines.0.nameList': 'Ana\nBo' },
  { 'job.lines.0.nameList': 'Ana\nana\nBo\nbo' },
  { 'artwork:club-crest.rights': { state: 'none', note: '' } },
  { 'artwork:club-crest.rights': { state: 'notStated', note: '' } },
  print(266.7, 317.5),
  print(3, 3),
  { 'workshop.sheets.0.widthMm': 60, 'workshop.sheets.0.heightMm': 60, 'workshop.policy.tapeMarginMm': 40 },
  onRoll({ widthMm: 100 }),
  onRoll({ widthMm: 6 }),
  onRoll({}),
  { 'workshop.sheets.0.price': yours(1.2, 'money/m') },
  finest({ capHeightMm: 2, reversed: true }),
  finest({ lineMm: 0.2 }),
  { 'job.lines.0.placements.0.bleedMm': 0 },
  { 'job.lines.0.placements.0.bleedMm': 2 },
  {
    'blank:white-shirt.kind': 'panel',
    ...print(400, 400),
  },
  { 'job.lines.0.placements.0.safeZoneMm': 2 },
  wrapped(180, 0),
  wrapped(240, 2),
  wrapped(240, 5),
  print(250, 200),
  print(215.9, 270),
  { ...print(215.9, 270), 'workshop.printers.0.borderless': true },
  print(206, 268),
  print(120, 160),
  { ...print(104.5, 104.5), 'workshop.sheets.0.widthMm': 216, 'workshop.sheets.0.heightMm': 216 },
  { 'workshop.printers.0.printedSide': 'unsure' },
  { 'workshop.sheets.0.paper': 'other' },
  {
    'workshop.sheets.0.gramsPerSquareMetre': 80,
    'artwork:hill-path.coverage': { kind: 'total', total: 2.4 },
  },
  { 'job.gang': 'together', 'job.lines.0.placements.0.mirror': false },
  { 'job.gang': 'together', 'job.lines.0.placements.0.recipe.dwellSeconds': 70 },
  { 'workshop.policy.gutterMm': 1 },
  { 'workshop.policy.gutterMm': 5 },
  print(280, 230),
  print(230, 250),
  print(235, 250),
  print(150, 150),
  print(380, 380),
  print(360, 300),
  { 'job.lines.0.placements.0.pressId': 'mug-press' },
  recipe('barrierPaper', false),
  heat(300, 'F'),
  heat(430, 'F'),
  heat(500, 'F'),
  heat(390, 'C'),
  heat(200, 'F'),
  recipe('dwellSeconds', 20),
  recipe('dwellSeconds', 100),
  recipe('pressureKpa', 900),
  { ...recipe('pressureKpa', null), ...recipe('pressure', 'firm') },
  recipe('pressureKpa', 10),
  recipe('preheatSeconds', null),
  recipe('protectivePaper', 'none'),
  recipe('protectivePaper', 'wax'),
  recipe('provenPresses', 5),
  { 'job.lines.0.orderedQuantity': 30 },
  { 'job.lines.0.quantities.0.quantity': 3.5 },
  { 'job.lines.0.quantities': [] },
  { 'job.lines.0.quantities.0.quantity': 5000 },
  { 'job.lines.0.quantities.0.size': 'XS' },
  { 'blank:white-shirt.sizes.0.price': null },
  { 'blank:white-shirt.sizes.0.price': null, 'blank:white-shirt.sizes.5.price': null },
  { 'job.lines.0.placements.0.prints.0.sizes': ['S'] },
  { 'blank:white-shirt.sizes.0.packSize': 7 },
  { 'workshop.rates.wage': null, 'workshop.rates.tariff': null, 'artwork:hill-path.coverage': null },
  { 'workshop.rates.wage': null, 'workshop.currency': 'JPY' },
  { 'workshop.rates.tariff': yours(0.18, 'money/kWh', addDays(TODAY, -100)) },
  { 'workshop.rates.tariff': yours(0.18, 'money/kWh', addDays(TODAY, -500)) },
  { 'workshop.rates.tariff': yours(0.18, 'money/kWh', addDays(TODAY, 2)) },
  { 'workshop.rates.tariff': yours(18, 'money/kWh') },
  { 'workshop.rates.overheadHours': yours(0, 'h/year') },
  { 'blank:white-shirt.sizes.0.price': yours(46, 'money/piece') },
  { 'workshop.rates.inkPrice': yours(160, 'money/mL') },
  { 'job.lines.0.placements.0.scrap': yours(0, 'share') },
  {
    'workshop.rates.targetMargin': yours(0.95, 'share'),
    'workshop.channels.0.commission': yours(0.1, 'share'),
  },
  { 'workshop.policy.wearInOverhead': true },
  { 'workshop.policy.breaks': [12, 6] },
  { 'job.lines.0.upCharges': [{ size: '9XL', amount: 4 }] },
  { 'workshop.policy.breaks': [1, 6, 6] },
  { 'workshop.policy.priceStep': 0.005 },
  { 'blank:white-shirt.sizes.4.price': yours(4.21, 'money/piece') },
  { 'job.lines.0.upCharges': [{ size: '2XL', amount: -1.5 }] },
  { 'workshop.presses.0.resale': yours(4800, 'money') },
  { 'job.lines.0.upCharges': [{ size: 'M', amount: -20 }] },
  { 'workshop.circuit': null, 'workshop.habits.ownCircuit': false },
  { 'workshop.circuit': { volts: 120, amps: 15, otherWatts: 100 } },
  { 'workshop.circuit': { volts: 120, amps: 15, otherWatts: 1000 } },
  { 'workshop.room': { ventilated: true, foodOvenUsed: true } },
  { 'workshop.room': { ventilated: false, foodOvenUsed: false } },
  { 'job.sewnLabel': 'covered' },
  { 'job.sewnLabel': 'removed' },
  { 'blank:white-shirt.forChildren': true },
  { 'workshop.channels.0.taxMode': null },
  { 'job.printerId': 'gone', 'job.channelId': 'gone' },
  { 'job.lines.0.ownPrices': [{ from: 12, each: 20.005 }] },
  { 'workshop.policy.breaks': [1, 6, 12, 24, 48], 'job.lines.0.ownPrices': [{ from: 10, each: 20 }] },
  { 'job.lines.0.selling': 'setUpApart', 'job.lines.0.ownPrices': [{ from: 10, each: 20 }] },
  { 'job.lines.0.askedPrice': 19.005, 'job.lines.0.upCharges': [{ size: '2XL', amount: 1.505 }] },
  { 'job.freightIn': null, 'job.deliveryKm': null },
  { 'job.freightIn': null, 'workshop.currency': 'JPY' },
  { ...onRoll({ widthMm: 609.6, heightMm: 1000 }), 'workshop.printers.0.longestPageMm': 300 },
  { 'workshop.rates.wage': yours(0, 'money/h') },
  { 'artwork:hill-path.coverage': { kind: 'total', total: 0 } },
  { ...read({}), 'artwork:hill-path.coverage': { kind: 'total', total: 0 } },
  {
    'job.lines.0.placements.0.handMinutes': yours(0.5, 'min'),
    'job.lines.0.placements.0.aloneMinutes': yours(0.1, 'min'),
  },
  { 'blank:white-shirt.suppliedBy': 'customer' },
  {
    'blank:white-shirt.fibres': [
      { fibre: 'polyester', share: 0.6 },
      { fibre: 'nylon', share: 0.25 },
      { fibre: 'elastane', share: 0.15 },
    ],
  },
  traits({ finish: 'performance' }),
  traits({ finish: 'heather' }),
  { ...traits({ finish: 'heather' }), ...recipe('pressure', 'light') },
  { ...traits({ dyed: true }), ...noTest },
  traits({ dyed: true }),
  {
    ...traits({ dyed: null }),
    ...noTest,
    'blank:white-shirt.colour': { name: 'sky blue', L: 80, a: -10, b: -20 },
  },
  { ...traits({ lot: 'B7' }), ...noTest },
  traits({ lot: 'B7', provenLot: 'A3' }),
  { 'blank:white-shirt.kind': 'bag', ...traits({ layers: 'two' }), ...recipe('barrierPaper', false) },
  { 'blank:white-shirt.kind': 'bag', ...recipe('barrierPaper', false) },
  drop(20),
  drop(150),
  badge(40),
  badge(130),
  { ...badge(100), 'job.lines.0.placements.1.recipe.steps.piecesPerPress': 90 },
  { 'job.lines.0.placements.0.recipe.steps.piecesPerPress': 7 },
  { 'workshop.presses.0.kind': 'mug', 'workshop.presses.1.kind': 'tumbler' },
  { ...traits({ thicknessMm: 40 }), 'workshop.presses.0.rating.openingMm': 25 },
  steps('lintRoll', false),
  steps('tapeEdges', false),
  steps('coolSeconds', 4),
  habits({ humidity: 0.3 }),
  habits({ humidity: 0.7 }),
  habits({ humidity: null, humidityFits: false }),
  habits({ leastPieces: 50 }),
  { 'job.lines.0.quantities': [{ size: 'S', quantity: 20 }] },
  { 'job.lines.0.quantities': ['S', 'M', 'XL', '2XL'].map((size) => ({ size, quantity: 9 })) },
  {
    'blank:white-shirt.sizes.0.name': '2T',
    'blank:white-shirt.forChildren': null,
    'job.lines.0.quantities': [{ size: '2T', quantity: 20 }],
  },
  { ...traits({ childRisks: ['bib', 'cords'] }), 'blank:white-shirt.forChildren': true },
  habits({ extensionLead: true, safetySheets: false, staysByPress: false }),
  {
    'job.lines.0.placements.0.aloneMinutes': yours(6, 'min'),
    'workshop.habits.staysByPress': null,
  },
  habits({ claims: [{ claim: 'organic' }] }),
  { 'blank:white-shirt.suppliedBy': 'customer' },
  {
    'job.lines.0.upCharges': [
      { size: 'S', amount: 1 },
      { size: 'S', amount: 2 },
    ],
  },
];

const row = (formula: string) => ({
  id: 'own_a',
  label: 'Licence',
  outOfPocket: true,
  cost: { kind: 'formula', formula } as const,
});

const findings: readonly Finding[] = [
  ...troubled.flatMap((fields) => checkJob(clubWith(fields)).findings),
  ...checkJob(mugsWith({ 'blank:white-mug.coating': 'uncoated' })).findings,
  ...checkJob(mugsWith({ 'blank:white-mug.coating': 'unknown' })).findings,
  ...checkJob(mugsWith({ 'artwork:fern-strip.pixels': { width: 1000, height: 425 } })).findings,
  ...[
    { 'blank:white-mug.traits.coatingHardness': 'unknown' },
    {
      'blank:white-mug.traits.coatingHardness': 'soft',
      'workshop.habits.claims': [{ claim: 'dishwasherSafe' }],
    },
    { 'blank:white-mug.kind': 'tile' },
    { 'job.lines.0.placements.0.rim': { belowMm: 12, inside: false } },
    { 'job.lines.0.placements.0.rim.inside': true },
    { 'job.lines.0.placements.0.recipe.steps.evenCooling': false },
  ].flatMap((fields) => checkJob(mugsWith(fields)).findings),
  ...(['waiting', 'over'] as const).flatMap((stage) =>
    checkOrder({
      ...{ orderId: 'order-1', asOf: TODAY, stage, wantedOn: '2026-12-01', approveBy: '2026-11-24' },
      ...{ ready: null, isApproved: false, isDepositPaid: true, childRows: 3, addresses: 0 },
    }),
  ),
  ...checkStallDay({
    ...{ stallDayId: 'fair', today: TODAY, presses: club().workshop.presses },
    stallDay: stallDaySchema.parse({
      name: 'Fair',
      power: { source: 'none', pressIds: ['clam'], guaranteedWatts: null },
    }),
  }),
  ...ofRun({}),
  ...ofRun({ isStoredSealed: false, ownBlocks: [ownBlock('2026-12-01', 1080, 60), ownBlock('2026-12-05')] }),
  ...reviewed({ 'workshop.blocks': null }, { benchMinutes: 300 }),
  ...reviewed({ 'workshop.blocks': null }, { benchMinutes: 600 }),
  ...reviewed({
    'workshop.presses.0.rating': { openingMm: null, pressesPerDay: 50, hotHoursPerDay: 2 },
    'workshop.printers.0.ratedSheetsPerMonth': 8,
  }),
  ...reviewed({}),
  ...reviewed(
    {},
    {
      attendedMinutes: 1100,
      cases: [{ lineId: 'shirts', size: 'L', price: 8, outOfPocketFloor: 6.5, fullCost: 11, fees: 0 }],
      pressOrders: [],
    },
  ),
  ...reviewed({}, { attendedMinutes: 60, benchMinutes: 60, work: looseWork(60) }),
  ...[9, -1].flatMap((written) =>
    reviewed(
      { 'job.lines.0.ownPrices': [{ from: 48, each: 9 }] },
      { ownPrices: [{ lineId: 'shirts', size: 'M', from: 48, at: 48, written, profit: written - 11 }] },
    ),
  ),
  ...reviewed(
    { 'job.lines.0.ownPrices': [{ from: 48, each: 40 }] },
    {
      breakPrices: [
        { lineId: 'shirts', size: 'M', from: 24, written: 18 },
        { lineId: 'shirts', size: 'M', from: 48, written: 40 },
      ],
    },
  ),
  ...reviewed(
    { 'job.wantedOn': '2026-12-09' },
    { attendedMinutes: 352, benchMinutes: 352, work: looseWork(352) },
  ),
  // Saturday is too late, no block holds a single shirt, and a block that holds no more than half of them.
  ...[
    { 'job.wantedOn': '2026-11-28' },
    { 'workshop.blocks': blocksOf([0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5]), 'job.wantedOn': '2027-02-26' },
    { 'workshop.blocks': blocksOf([2.5, 2.5, 2.5, 2.5, 2.5, 2.5, 2.5]) },
  ].flatMap((fields) => reviewed(fields, { attendedMinutes: 90, benchMinutes: 90, work: clubWork })),
  ...reviewed({ 'workshop.blocks': null }),
  ...reviewed({ 'workshop.blocks': blocksOf([0, 0, 0, 0, 0, 0, 0]) }),
  ...reviewed({ 'blank:white-shirt.leadWorkingDays': null }),
  ...formulaFindings(
    [
      { kind: 'unreadable', rowId: 'own_a', at: 3 },
      { kind: 'tooDeep', rowId: 'own_a', at: 20 },
      { kind: 'decimalComma', rowId: 'own_a', at: 0, text: '0,5', instead: '0.5', mended: '0.5' },
      { kind: 'unknownName', rowId: 'own_a', at: 3, name: 'wagge' },
      { kind: 'circle', rowId: 'own_a', names: ['own_a', 'own_a'] },
    ],
    [row('1')],
    [],
  ),
  makeFinding({
    id: 'ROW-03',
    severity: 'stop',
    where: { document: 'job', path: [] },
    facts: { label: 'Licence', error: '#DIV/0!' },
  }),
];

const spoken = [
  ...new Map(
    findings.map((finding) => [`${finding.id} ${finding.variant ?? ''} ${finding.severity}`, finding]),
  ),
];

const stallSpoken = findingSamples
  .filter(
    ({ id, variant = '' }) => id === 'ELE-03' && ['askSource', 'askWatts', 'tooLittle'].includes(variant),
  )
  .map((finding) => [finding.variant, finding] as const);

describe('every finding has words', () => {
  it.each(findingIds)('%s is brought to speak here', (id: FindingId) => {
    expect(findings.map((finding) => finding.id)).toContain(id);
  });

  it.each(spoken)('%s: a sentence, what follows, no gap, no shouting, every fact used', (_, finding) => {
    expect(factsUsed(finding)).toEqual(factsGiven(finding));
    for (const context of [inches, metric]) {
      const { sentence, detail, fixLabel } = findingWords(finding, context);
      for (const text of [sentence, detail]) {
        expect(text).toMatch(/^[\p{Lu}“\d].*[.”]$/u);
        expect(text).not.toMatch(/!|undefined|NaN|\s\s|\{|\}/);
      }
      expect(fixLabel === null).toBe(finding.fix === null);
    }
  });

  it('has words for every button, and every button is brought up here', () => {
    const labels = new Set(findings.flatMap(({ fix }) => (fix === null ? [] : [fix.label])));
    expect([...labels].sort()).toEqual(Object.keys(fixLabels).sort());
  });

  it.each(spoken.filter(([, { id }]) => id.startsWith('LAW') || id === 'ART-14' || id === 'SAF-01'))(
    '%s leaves the last word to the local authority',
    (_, finding) => {
      expect(findingWords(finding, inches).detail).toMatch(/ask your local authority[^.]*\.$/i);
    },
  );

  it.each(stallSpoken)('%s leaves the stall’s power to an electrician and the local codes', (_, finding) => {
    expect(findingWords(finding, inches).detail).toMatch(/Ask a licensed electrician, .* local codes\.$/);
  });

  it.each(spoken.filter(([, { id }]) => id === 'ELE-01'))('%s leaves it to an electrician', (_, finding) => {
    expect(findingWords(finding, inches).detail).toMatch(/Ask a licensed electrician\.$/);
  });
});

describe('figures are written the maker’s way', () => {
  const only = (fields: Record<string, unknown>, id: FindingId): Finding => {
    const found = checkJob(clubWith(fields)).findings.find((finding) => finding.id === id);
    if (found === undefined) throw new Error(`${id} was not told`);
    return found;
  };

  it('lengths in inches or millimetres', () => {
    const finding = only(print(266.7, 317.5), 'LAY-01');
    expect(findingWords(finding, inches)).toMatchObject({
      sentence: 'Back picture at 10.5 × 12.5 in does not fit Letter sheet, either way round.',
      fixLabel: 'Print at 8 × 9.52 in',
    });
    expect(findingWords(finding, metric).sentence).toContain('266,7 × 317,5 mm');
  });

  it('no size of a sheet that borders and tape use up', () => {
    // Tape on both sides takes 2 × 40 mm of the 60.
    const finding = only(
      {
        'workshop.sheets.0.widthMm': 60,
        'workshop.sheets.0.heightMm': 60,
        'workshop.policy.tapeMarginMm': 40,
      },
      'LAY-01',
    );
    expect(findingWords(finding, metric)).toEqual({
      sentence: 'Back picture at 203,2 × 254 mm does not fit Letter sheet, either way round.',
      detail:
        'The borders of the printer and the room for tape leave nothing of the sheet, so no print would fit. Check both in the workshop, or use a larger sheet.',
      fixLabel: null,
    });
  });

  it('temperatures in °F or °C', () => {
    const finding = only(heat(430, 'F'), 'REC-01');
    expect(findingWords(finding, inches).sentence).toContain(
      '430 °F; usual for polyester shirts is 385 °F to 400 °F',
    );
    expect(findingWords(finding, metric).sentence).toContain('221 °C');
  });

  it('pressure in psi, kPa or bar', () => {
    const finding = only(recipe('pressureKpa', 500), 'REC-03');
    expect(findingWords(finding, inches).sentence).toContain('73 psi');
    expect(findingWords(finding, metric).sentence).toContain('5 bar');
    const kpa = { ...metric, units: { ...metric.units, pressure: 'kPa' } } as const;
    expect(findingWords(finding, kpa).sentence).toContain('500 kPa');
  });

  it('money after the number, in the currency’s own digits', () => {
    const [finding] = reviewed({}).filter(({ id }) => id === 'RATE-08');
    if (finding === undefined) throw new Error('RATE-08 was not told');
    expect(findingWords(finding, inches).sentence).toContain('3.00 USD a piece');
    expect(findingWords(finding, { ...inches, currency: 'JPY' }).sentence).toContain('3 JPY a piece');
  });

  it('in a locale the browser does not know, in plain English figures', () => {
    const [finding] = checkJob(club()).findings;
    if (finding === undefined) throw new Error('nothing was told');
    expect(findingWords(finding, { ...inches, locale: 'en-ab-cd' }).sentence).not.toBe('');
  });
});
