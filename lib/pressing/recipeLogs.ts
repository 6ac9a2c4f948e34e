import { grouped } from '@/shared/grouped';
import type { Entry } from '@/shared/schemas/happened';
import type { PressTest, WashCheck } from '@/shared/schemas/making/pressLog';
import type { Pressing } from '@/shared/schemas/making/runEvents';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import { inPressOrder, type PressedEntry } from './pressedEntry';
import { type RecipeUse, recipeKey } from './recipeKey';
import { type RecipeEvent, type RecipeStanding, recipeStanding } from './recipeStanding';
import { recipeUses, type StandardOfRecipes } from './recipeUses';
import { type ScrapAlarm, scrapAlarms } from './scrapAlarms';
import { inTestOrder, type TestEntry } from './testTrail';

type Noted<Kind extends string, Body> = Pick<
  Entry<Kind, Body>,
  'id' | 'kind' | 'device' | 'count' | 'at' | 'body'
>;

/** All that the press log is folded from; entries in force, in any order. */
interface PressLogNotes {
  readonly pressings: readonly Noted<'pressing', Pressing>[];
  readonly tests: readonly Noted<'pressTest', PressTest>[];
  readonly washes: readonly Noted<'washCheck', WashCheck>[];
  readonly goodsIn: readonly Noted<'goodsIn', GoodsIn>[];
  readonly standards: readonly StandardOfRecipes[];
}

/** What one run pressed by a recipe. */
interface RunOfRecipe {
  readonly runId: string;
  readonly title: string;
  readonly prints: readonly string[];
  readonly good: number;
  readonly seconds: number;
  readonly scrap: number;
  readonly lastAt: number;
}

/** One recipe on one blank in one press. */
export interface RecipeLog extends RecipeUse {
  readonly key: string;
  readonly standing: RecipeStanding;
  /** In the order in which they were lifted. */
  readonly pressed: readonly PressedEntry[];
  /** All newest first. */
  readonly tests: readonly TestEntry[];
  readonly runs: readonly RunOfRecipe[];
  readonly alarms: readonly ScrapAlarm[];
  readonly washes: readonly Noted<'washCheck', WashCheck>[];
  /** Lots of the cloth, the newest first, as goods in and tests name them. */
  readonly lots: readonly string[];
  readonly lastAt: number;
}

/** The press log. */
interface PressLog {
  /** Used last first. */
  readonly recipes: readonly RecipeLog[];
  /** Pieces pressed by no standard that is here: by which recipe nobody can tell. */
  readonly withoutRecipe: readonly PressedEntry[];
}

/** Folds tests, pieces of all runs, washes and new lots by recipe × blank × press; the same in any order, from any devices. */
export function recipeLogs(notes: PressLogNotes): PressLog {
  const recipeOf = recipeUses(notes.standards);
  const groups = new Map<string, Group>();
  const withoutRecipe: PressedEntry[] = [];
  const lotOfBlank = new Map<string, string>();
  const groupOf = (use: RecipeUse): Group => {
    const key = recipeKey(use);
    const group = groups.get(key) ?? newGroup(key, use, lotOfBlank.get(use.blankId));
    groups.set(key, group);
    return group;
  };
  const all = [...notes.pressings, ...notes.tests, ...notes.washes, ...notes.goodsIn];
  for (const entry of inPressOrder(all)) {
    switch (entry.kind) {
      case 'pressing': {
        const use = recipeOf(entry.body);
        if (use === undefined) withoutRecipe.push(entry);
        else groupOf(use).add({ what: 'pressed', entry }, entry);
        break;
      }
      case 'pressTest': {
        const group = groupOf(entry.body);
        if (group.lots.isNew(entry.body)) group.events.push({ what: 'newLot' });
        group.add({ what: 'tested', test: entry.body }, entry);
        break;
      }
      case 'washCheck':
        groupOf(entry.body).add({ what: 'washed', check: entry.body }, entry);
        break;
      case 'goodsIn':
        for (const { item, lot } of entry.body.rows) {
          if (item.kind !== 'blank' || lot === null) continue;
          lotOfBlank.set(item.blankId, lot);
          for (const group of groups.values()) {
            if (group.use.blankId === item.blankId && group.lots.isNew({ lot, paperLot: null, inkLot: null }))
              group.events.push({ what: 'newLot' });
          }
        }
        break;
      default:
        entry satisfies never;
    }
  }
  const titles = new Map(notes.standards.map(({ body }) => [body.runId, body]));
  return {
    recipes: [...groups.values()]
      .map((group) => logOf(group, titles))
      .toSorted((a, b) => b.lastAt - a.lastAt),
    withoutRecipe,
  };
}

// Helpers

type ThingOfRecipe =
  | Noted<'pressing', Pressing>
  | Noted<'pressTest', PressTest>
  | Noted<'washCheck', WashCheck>;

interface Group {
  readonly key: string;
  readonly use: RecipeUse;
  readonly events: RecipeEvent[];
  readonly noted: ThingOfRecipe[];
  readonly lots: Lots;
  readonly add: (event: RecipeEvent, entry: ThingOfRecipe) => void;
}

function newGroup(key: string, { recipe, blankId, pressId }: RecipeUse, lot: string | undefined): Group {
  const events: RecipeEvent[] = [];
  const noted: ThingOfRecipe[] = [];
  const add = (event: RecipeEvent, entry: ThingOfRecipe) => {
    events.push(event);
    noted.push(entry);
  };
  return { key, use: { recipe, blankId, pressId }, events, noted, lots: lotsFrom(lot ?? null), add };
}

interface Lots {
  /** Cloth, the oldest first. */
  readonly seen: string[];
  /** Whether a lot is named that differs from the one named last; none is new while none was named. */
  readonly isNew: (named: Pick<PressTest, 'lot' | 'paperLot' | 'inkLot'>) => boolean;
}

function lotsFrom(first: string | null): Lots {
  const known: { lot: string | null; paperLot: string | null; inkLot: string | null } = {
    ...{ lot: first, paperLot: null, inkLot: null },
  };
  const seen = first === null ? [] : [first];
  return {
    seen,
    isNew: (named) => {
      let isNew = false;
      for (const which of ['lot', 'paperLot', 'inkLot'] as const) {
        const [now, next] = [known[which], named[which]];
        if (next === null || next === now) continue;
        isNew ||= now !== null;
        known[which] = next;
        if (which === 'lot') seen.push(next);
      }
      return isNew;
    },
  };
}

function logOf(
  { key, use, events, noted, lots }: Group,
  standards: ReadonlyMap<string, RunStandard>,
): RecipeLog {
  const pressed = noted.filter((entry) => entry.kind === 'pressing');
  const tests = inTestOrder(noted.filter((entry) => entry.kind === 'pressTest'));
  return {
    ...{ key, ...use, standing: recipeStanding(byDays(events, tests)), pressed },
    tests: tests.toReversed(),
    runs: runsOf(pressed, standards),
    alarms: scrapAlarms(pressed).toReversed(),
    washes: noted.filter((entry) => entry.kind === 'washCheck').toReversed(),
    lots: lots.seen.toReversed(),
    lastAt: Math.max(...noted.map(({ at }) => at)),
  };
}

/** A test that was noted days later takes its place among the tests: three in a row are those that the log lists so. */
function byDays(events: readonly RecipeEvent[], tests: readonly TestEntry[]): readonly RecipeEvent[] {
  const waiting = tests.values();
  return events.map((event) => {
    if (event.what !== 'tested') return event;
    const next = waiting.next();
    return next.done === true ? event : { what: 'tested', test: next.value.body };
  });
}

function runsOf(
  pressed: readonly PressedEntry[],
  standards: ReadonlyMap<string, RunStandard>,
): readonly RunOfRecipe[] {
  const byRun = grouped(pressed, ({ body }) => body.runId);
  return [...byRun]
    .map(([runId, own]): RunOfRecipe => {
      const standard = standards.get(runId);
      const many = (result: Pressing['result']) => own.filter(({ body }) => body.result === result).length;
      const names =
        standard?.works.flatMap(({ lines }) => lines.flatMap(({ placements }) => placements)) ?? [];
      const ids = new Set(own.map(({ body }) => body.placementId));
      return {
        ...{ runId, title: standard?.title ?? '' },
        prints: [...new Set(names.filter(({ placementId }) => ids.has(placementId)).map(({ name }) => name))],
        ...{ good: many('good'), seconds: many('second'), scrap: many('scrap') },
        lastAt: Math.max(...own.map(({ at }) => at)),
      };
    })
    .toSorted((one, other) => other.lastAt - one.lastAt);
}
