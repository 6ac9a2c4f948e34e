import type { Decimal } from 'decimal.js';
import { ONE, sum, ZERO } from './exact';
import type { GroupPlan, LinePlan, PlacementPlan, Plan, SizePlan } from './planOf';
import type { Shop } from './shopOf';

/** What one placement takes, for one good piece or for all that carry it. */
export interface SlotUse {
  readonly entering: Decimal;
  readonly tests: Decimal;
  /** Paper of the tests. */
  readonly testSheets: Decimal;
  readonly wholeSheets: Decimal;
  /** Whole sheets, replacements, and the rejected ones beside them. */
  readonly sheetsRun: Decimal;
}

/** Everything that is used: by one good piece of a size, or by the whole job. */
export interface Use {
  readonly pieces: Decimal;
  /** Parts of the order, of a session and of all designs that fall on it; 1, all and all for the whole job. */
  readonly orders: Decimal;
  readonly sessions: Decimal;
  readonly designs: Decimal;
  readonly designMinutes: Decimal;
  readonly blankMoney: Decimal;
  readonly blankMoneyExpected: Decimal;
  readonly blanksDrawn: Decimal;
  readonly slots: readonly SlotUse[];
  readonly inkGood: Decimal;
  readonly inkRun: Decimal;
  readonly inkTests: Decimal;
  /** Per press: by good pieces and tests, by all that enter, by the tests alone. */
  readonly supplies: PressSums;
  readonly wear: PressSums;
  readonly hold: PressSums;
  readonly hands: PressSums;
  readonly alone: PressSums;
  readonly finishMinutes: Decimal;
  readonly packaging: Decimal;
  /** Price without tax where one is asked of all of it. */
  readonly asked: Decimal | null;
}

export interface PressSums {
  readonly good: Decimal;
  readonly run: Decimal;
  readonly tests: Decimal;
}

/** What one good piece of a size takes. */
export function pieceUse(plan: Plan, line: LinePlan, size: SizePlan, shop: Shop, slotCount: number): Use {
  const each = line.placements.map((placement) => {
    const group = groupOf(placement, size.size);
    return { placement, group, slot: slotOfPiece(placement, group, line, shop) };
  });
  const perPress = (of: (placement: PlacementPlan) => Decimal): PressSums => ({
    good: sum(each.map(({ placement }) => of(placement))),
    run: sum(each.map(({ placement }) => of(placement).times(placement.entering))),
    tests: sum(each.map(({ placement }) => of(placement).times(placement.tests).div(line.pieces))),
  });
  const artworks = line.artworks.flatMap((id) => {
    const artwork = plan.artworks.get(id);
    return artwork === undefined ? [] : [artwork];
  });
  return {
    pieces: ONE,
    orders: ONE.div(plan.pieces),
    sessions: plan.sessions.div(plan.pieces),
    designs: sum(artworks.map(({ pieces }) => ONE.div(pieces))),
    designMinutes: sum(artworks.map(({ prep, pieces }) => prep.div(pieces))),
    blankMoney: size.blankPrice,
    blankMoneyExpected: size.blankPrice.times(line.blanksPerPiece),
    blanksDrawn: line.blanksPerPiece,
    slots: padded(
      each.map(({ slot }) => slot),
      slotCount,
    ),
    inkGood: sum(each.map(({ group }) => group.inkPerPrint)),
    inkRun: sum(
      each.map(({ placement, group }) => placement.entering.div(shop.kept).times(group.inkPerPrint)),
    ),
    inkTests: sum(
      each.map(({ placement, group }) => placement.tests.div(line.pieces).times(group.inkPerPrint)),
    ),
    supplies: perPress(({ supplies }) => supplies),
    wear: perPress(({ wear }) => wear),
    hold: perPress(({ holdKwh }) => holdKwh),
    hands: perPress(({ handMinutes }) => handMinutes),
    alone: perPress(({ aloneMinutes }) => aloneMinutes),
    finishMinutes: line.finishMinutes,
    packaging: line.packaging,
    asked: size.asked,
  };
}

/** What the whole job takes, from its totals: nothing here is a sum of single pieces. */
export function jobUse(plan: Plan, shop: Shop, slotCount: number): Use {
  const presses = plan.lines.flatMap((line) => line.placements.map((placement) => ({ line, placement })));
  const perPress = (of: (placement: PlacementPlan) => Decimal): PressSums => ({
    good: sum(presses.map(({ line, placement }) => of(placement).times(line.pieces))),
    run: sum(
      presses.map(({ line, placement }) => of(placement).times(line.pieces.times(placement.entering))),
    ),
    tests: sum(presses.map(({ placement }) => of(placement).times(placement.tests))),
  });
  const prints = presses.flatMap(({ line, placement }) =>
    placement.groups.map((group) => ({ line, placement, group })),
  );
  const blanks = sum(
    plan.lines.flatMap(({ sizes }) => sizes.map(({ pieces, blankPrice }) => pieces.times(blankPrice))),
  );
  const slots = Array.from({ length: slotCount }, (_, index) => slotOfJob(plan.lines, index, shop));
  return {
    pieces: plan.pieces,
    orders: ONE,
    sessions: plan.sessions,
    designs: sum([...plan.artworks.values()].map(() => ONE)),
    designMinutes: sum([...plan.artworks.values()].map(({ prep }) => prep)),
    blankMoney: blanks,
    blankMoneyExpected: sum(
      plan.lines.map(({ sizes, blanksPerPiece }) =>
        sum(sizes.map(({ pieces, blankPrice }) => pieces.times(blankPrice))).times(blanksPerPiece),
      ),
    ),
    blanksDrawn: sum(plan.lines.map(({ pieces, blanksPerPiece }) => pieces.times(blanksPerPiece))),
    slots,
    inkGood: sum(prints.map(({ group }) => group.pieces.times(group.inkPerPrint))),
    inkRun: sum(
      prints.map(({ placement, group }) =>
        group.pieces.times(placement.entering).times(group.inkPerPrint).div(shop.kept),
      ),
    ),
    inkTests: sum(
      prints.map(({ line, placement, group }) =>
        placement.tests.times(group.inkPerPrint).times(group.pieces).div(line.pieces),
      ),
    ),
    supplies: perPress(({ supplies }) => supplies),
    wear: perPress(({ wear }) => wear),
    hold: perPress(({ holdKwh }) => holdKwh),
    hands: perPress(({ handMinutes }) => handMinutes),
    alone: perPress(({ aloneMinutes }) => aloneMinutes),
    finishMinutes: sum(plan.lines.map(({ pieces, finishMinutes }) => pieces.times(finishMinutes))),
    packaging: sum(plan.lines.map(({ pieces, packaging }) => pieces.times(packaging))),
    asked: null,
  };
}

/** The print size that a size has at a placement. */
export function groupOf(placement: PlacementPlan, size: string): GroupPlan {
  const group = placement.groups.find(({ sizes }) => sizes.has(size));
  if (group === undefined) throw new ReferenceError(`no print size for ${size}`);
  return group;
}

const idle: SlotUse = { entering: ZERO, tests: ZERO, testSheets: ZERO, wholeSheets: ZERO, sheetsRun: ZERO };

const padded = (slots: readonly SlotUse[], count: number): readonly SlotUse[] =>
  Array.from({ length: count }, (_, index) => slots[index] ?? idle);

function slotOfPiece(placement: PlacementPlan, group: GroupPlan, line: LinePlan, shop: Shop): SlotUse {
  const spoiled = placement.entering.minus(1);
  const wholeSheets = group.wholeSheets.div(group.pieces);
  return {
    entering: placement.entering,
    tests: placement.tests.div(line.pieces),
    testSheets: placement.tests.div(line.pieces).times(group.letters),
    wholeSheets,
    sheetsRun: wholeSheets.plus(spoiled.times(placement.perReplacement(group))).div(shop.kept),
  };
}

/** H = (ceil(N/u) + (E − N) q) / (1 − r) for every print size of the slot. */
function slotOfJob(lines: readonly LinePlan[], index: number, shop: Shop): SlotUse {
  const used = lines.flatMap((line) => {
    const placement = line.placements[index];
    return placement === undefined ? [] : [{ line, placement }];
  });
  const groups = used.flatMap(({ line, placement }) =>
    placement.groups.map((group) => ({ line, placement, group })),
  );
  const enteringOf = (pieces: Decimal, placement: PlacementPlan) => pieces.times(placement.entering);
  return {
    entering: sum(used.map(({ line, placement }) => enteringOf(line.pieces, placement))),
    tests: sum(used.map(({ placement }) => placement.tests)),
    // Each print size has its share of the tests.
    testSheets: sum(
      groups.map(({ line, placement, group }) =>
        placement.tests.times(group.pieces).div(line.pieces).times(group.letters),
      ),
    ),
    wholeSheets: sum(groups.map(({ group }) => group.wholeSheets)),
    sheetsRun: sum(
      groups.map(({ placement, group }) =>
        group.wholeSheets
          .plus(
            enteringOf(group.pieces, placement).minus(group.pieces).times(placement.perReplacement(group)),
          )
          .div(shop.kept),
      ),
    ),
  };
}
