import type { Decimal } from 'decimal.js';
import { sum, ZERO } from './exact';
import type { Shop } from './shopOf';
import type { PressSums, Use } from './use';

export type Figures = Readonly<Record<string, Decimal>>;

/** Cost of the maker's own rows for what a piece or a job uses. */
export interface OwnCosts {
  readonly byRow: Figures;
  readonly all: Decimal;
  readonly outOfPocket: Decimal;
}

const slotSum = (use: Use, of: (slot: Use['slots'][number]) => Decimal) => sum(use.slots.map(of));
const goodAndTests = ({ good, tests }: PressSums) => good.plus(tests);
const runAndTests = ({ run, tests }: PressSums) => run.plus(tests);

/** Pieces, sheets, presses, ink, power and minutes, by the name each has on the cost sheet. */
export function quantitiesOf(use: Use, shop: Shop) {
  const tests = slotSum(use, (slot) => slot.tests);
  const testSheets = slotSum(use, (slot) => slot.testSheets);
  const sheets = slotSum(use, (slot) => slot.sheetsRun).plus(testSheets);
  const sheetsBase = slotSum(use, (slot) => slot.wholeSheets).plus(testSheets);
  const inkSession = use.sessions.times(shop.sessionInk);
  const warmKwh = use.sessions.times(shop.warmUpKwh);
  const rested = (minutes: Decimal) => minutes.times(shop.restFactor);
  const orderTime = use.orders.times(shop.orderMinutes);
  const sessionTime = use.sessions.times(shop.sessionMinutes);
  const sheetTime = sheets.times(shop.sheetMinutes);
  const pressTime = runAndTests(use.hands);
  // Every good piece is sold once, whatever was spoiled on the way to it.
  const sellingTime = use.pieces.times(shop.sellingMinutes);
  const onceTime = orderTime.plus(use.designMinutes).plus(sessionTime).plus(sellingTime);
  const runTime = rested(sheetTime.plus(pressTime).plus(use.finishMinutes));
  const attended = rested(onceTime).plus(runTime);
  const unattended = sheets
    .times(shop.printerMinutes)
    .plus(runAndTests(use.alone))
    .plus(use.sessions.times(shop.warmUpMinutes));
  return {
    goodPieces: use.pieces,
    blanksDrawn: use.blanksDrawn,
    sheets,
    sheetsBase,
    presses: slotSum(use, (slot) => slot.entering).plus(tests),
    inkRun: use.inkRun,
    inkTests: use.inkTests,
    inkSession,
    inkMl: use.inkRun.plus(use.inkTests).plus(inkSession),
    inkMlBase: use.inkGood.plus(use.inkTests).plus(inkSession),
    holdKwhRun: use.hold.run,
    holdKwhTests: use.hold.tests,
    holdKwhBase: goodAndTests(use.hold),
    warmKwh,
    kwh: runAndTests(use.hold).plus(warmKwh).plus(sheets.times(shop.printerKwh)),
    kwhBase: goodAndTests(use.hold).plus(warmKwh).plus(sheetsBase.times(shop.printerKwh)),
    orderTime,
    designs: use.designs,
    designTime: use.designMinutes,
    sessionTime,
    sellingTime,
    sheetTime,
    pressTime,
    runTime,
    attended,
    runTimeBase: rested(
      sheetsBase.times(shop.sheetMinutes).plus(goodAndTests(use.hands)).plus(use.finishMinutes),
    ),
    attendedBase: rested(
      onceTime
        .plus(sheetsBase.times(shop.sheetMinutes))
        .plus(goodAndTests(use.hands))
        .plus(use.finishMinutes),
    ),
    benchTime: attended.minus(
      rested(sum([use.designMinutes, sellingTime, use.orders.times(shop.enquiryAndProof)])),
    ),
    unattended,
    elapsed: attended.plus(unattended),
  };
}

export type Quantities = ReturnType<typeof quantitiesOf>;

/** Every line of the cost sheet at baseline and at expected use, up to full cost. */
export function costsOf(use: Use, q: Quantities, shop: Shop, own: OwnCosts) {
  const hours = (minutes: Decimal) => minutes.div(60);
  const freight = use.orders.times(shop.freight);
  const base = {
    blanks: use.blankMoney.plus(freight),
    paper: q.sheetsBase.times(shop.sheetPrice),
    ink: q.inkMlBase.times(shop.inkPrice),
    supplies: goodAndTests(use.supplies),
    electricity: q.kwhBase.times(shop.tariff),
    wear: goodAndTests(use.wear).plus(q.sheetsBase.times(shop.printerWear)),
    labour: hours(q.attendedBase).times(shop.wage),
    overhead: hours(q.attendedBase).times(shop.overheadRate),
  };
  const expected = {
    blanksExpected: use.blankMoneyExpected.plus(freight),
    paperExpected: q.sheets.times(shop.sheetPrice),
    inkExpected: q.inkMl.times(shop.inkPrice),
    suppliesExpected: runAndTests(use.supplies),
    electricityExpected: q.kwh.times(shop.tariff),
    wearExpected: runAndTests(use.wear).plus(q.sheets.times(shop.printerWear)),
    labourExpected: hours(q.attended).times(shop.wage),
    overheadExpected: hours(q.attended).times(shop.overheadRate),
  };
  const spoilage = sum(Object.values(expected)).minus(sum(Object.values(base)));
  const { paperExpected, suppliesExpected, inkExpected } = expected;
  const reprintMaterials = use.blankMoneyExpected
    .plus(paperExpected)
    .plus(suppliesExpected)
    .plus(inkExpected);
  const runPay = hours(q.runTime).times(shop.wage.plus(shop.overheadRate));
  const reprints = shop.reprintShare.times(reprintMaterials.plus(runPay));
  const packaging = use.packaging.plus(use.orders.times(shop.orderPackaging));
  const delivery = use.orders.times(shop.delivery).plus(use.pieces.times(shop.dayEach));
  return {
    ...base,
    ...expected,
    packaging,
    delivery,
    spoilage,
    reprintMaterials,
    reprints,
    ...own.byRow,
    ownCosts: own.all,
    ownCash: own.outOfPocket,
    fullCost: sum([...Object.values(base), packaging, delivery, own.all, spoilage, reprints]),
    incrementalCost: incrementalCost(use, shop),
  };
}

export type Costs = ReturnType<typeof costsOf>;

/** Material, run minutes, wear and holding power of one more piece: no test, order, artwork, session or overhead. */
function incrementalCost(use: Use, shop: Shop): Decimal {
  const sheets = slotSum(use, (slot) => slot.sheetsRun);
  const minutes = sheets.times(shop.sheetMinutes).plus(use.hands.run).plus(use.finishMinutes);
  return sum([
    use.blankMoneyExpected,
    sheets.times(shop.sheetPrice.plus(shop.printerWear)),
    use.inkRun.times(shop.inkPrice),
    use.supplies.run,
    use.wear.run,
    use.hold.run.times(shop.tariff),
    minutes.times(shop.restFactor).div(60).times(shop.wage),
  ]);
}

/** Floors, target, and what the price leaves. */
export function pricesOf(use: Use, q: Quantities, c: Costs, shop: Shop, price: Decimal | null) {
  const cash = sum([
    c.blanksExpected,
    c.paperExpected,
    c.inkExpected,
    c.suppliesExpected,
    c.electricityExpected,
    c.packaging,
    c.delivery,
    c.ownCash,
  ]);
  const cardFixed = shop.cardFixedFee.times(
    shop.cardPayments.times(use.orders).plus(shop.cardTicketsPerPiece.times(use.pieces)),
  );
  const afterFees = shop.feeShare.negated().plus(1);
  const outlay = cash.plus(shop.reprintShare.times(c.reprintMaterials)).plus(cardFixed);
  const target = c.fullCost.plus(cardFixed).div(afterFees.minus(shop.targetMargin));
  const paid = price ?? target;
  const fees = paid.times(shop.feeShare).plus(cardFixed);
  const profit = paid.minus(fees).minus(c.fullCost);
  return {
    cash,
    cardFixed,
    outOfPocketFloor: outlay.div(afterFees),
    variableFloor: outlay.plus(q.runTime.div(60).times(shop.wage)).div(afterFees),
    target,
    price: paid,
    fees,
    profit,
    margin: profit.div(paid),
    markup: profit.div(c.fullCost.plus(fees)),
    payPerHour: q.attended.isZero() ? ZERO : profit.plus(c.labourExpected).div(q.attended.div(60)),
  };
}
