import type { Artwork } from '@/shared/schemas/artwork';
import type { Position } from '@/shared/schemas/blank';
import type { Job, Placement, Recipe } from '@/shared/schemas/job';

type Choices<Value extends string> = readonly Readonly<{ value: Value; label: string }>[];

const choices = <Value extends string>(labels: Readonly<Record<Value, string>>): Choices<Value> =>
  (Object.keys(labels) as Value[]).map((value) => ({ value, label: labels[value] }));

/** What the maker chooses between in a job, in words. */
export const jobChoices = {
  madeFor: choices<Job['madeFor']>({ order: 'To order', stock: 'To stock, for a stall' }),
  gang: choices<Job['gang']>({
    apart: 'Each print on sheets of its own',
    together: 'Different prints may share a sheet',
  }),
  sewnLabel: choices<Job['sewnLabel']>({
    kept: 'stays in',
    covered: 'is covered by the print',
    removed: 'is taken out',
    unknown: 'as the workshop says',
  }),
  position: choices<Position>({
    front: 'front',
    back: 'back',
    leftChest: 'left chest',
    rightChest: 'right chest',
    leftSleeve: 'left sleeve',
    rightSleeve: 'right sleeve',
    wrap: 'all round',
    face: 'face',
  }),
  fit: choices<Placement['fit']>({
    inside: 'whole, inside the size',
    fill: 'fills the size, cut at the edge',
    stretch: 'stretched to the size',
  }),
  raisedParts: choices<Placement['raisedParts']>({
    none: 'none near the print',
    underPlaten: 'under the platen, beside the print',
    insidePrint: 'inside the print',
  }),
  replacements: choices<Placement['replacements']>({
    alone: 'each on a sheet of its own',
    ganged: 'with others on a full sheet',
  }),
  temperatureUnit: choices<Recipe['temperature']['unit']>({ F: '°F', C: '°C' }),
  pressure: choices<Recipe['pressure']>({
    light: 'light',
    lightMedium: 'light to medium',
    medium: 'medium',
    mediumFirm: 'medium to firm',
    firm: 'firm',
  }),
  protectivePaper: choices<Recipe['protectivePaper']>({
    freshPlain: 'fresh plain paper',
    reused: 'paper used before',
    parchment: 'parchment',
    wax: 'waxed paper',
    ptfe: 'a PTFE sheet',
    none: 'none',
  }),
  colourMatch: choices<Artwork['colourMatch']>({
    free: 'no colour has to match',
    wanted: 'has to match, no swatch approved yet',
    approved: 'has to match, pressed swatch approved',
  }),
  rights: choices<Artwork['rights']['state']>({
    own: 'it is my own',
    permission: 'I have written permission',
    promised: 'permission is promised',
    notStated: 'not asked yet',
    none: 'there is no permission',
  }),
};

/** @returns the words of a value among its choices. */
export const choiceWords = (list: Choices<string>, value: string): string =>
  list.find((choice) => choice.value === value)?.label ?? value;
