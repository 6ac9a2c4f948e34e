import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { RateKey } from '@/app/_workshop/rateSpec';
import { OWN_BLANK_ID, OWN_JOB_ID } from '@/lib/examples/ownWorkshop';
import { type NumberLimits, numberLimits } from '@/shared/limits';
import { blankSizeSchema } from '@/shared/schemas/blank';
import { placementSchema } from '@/shared/schemas/job';
import type { Rate } from '@/shared/schemas/rate';
import { ratesSchema, type Workshop, workshopSchema } from '@/shared/schemas/workshop';
import { type RateName, type RateUnit, rateDefinition, rateNames } from '@/shared/tables/rateCatalogue';
import {
  blankTypicals,
  channelTypicals,
  otherTypicals,
  placementTypicals,
  pressTypicals,
  printerTypicals,
  type TypicalRate,
  typicalMoneyCurrencies,
} from '@/shared/tables/typicalRates';

/** One figure of the walk through a new workshop. */
interface StartQuestion {
  readonly label: string;
  /** What moves when it moves. */
  readonly changes: string;
  readonly units: readonly [RateUnit, ...RateUnit[]];
  readonly limits: NumberLimits;
  readonly typical: number | null;
  readonly rate: Rate | null;
  readonly onCommit: (rate: Rate | null) => void;
}

/** The figures that matter most, in order; in a currency in which nothing is typical, every amount a first price needs. */
export function startQuestions(workspace: ReadyWorkspace): readonly StartQuestion[] {
  const asked = new Map<number, StartQuestion>();
  for (const name of rateNames) {
    const place = rateDefinition(name).asked;
    if (place !== undefined) asked.set(place, catalogueStep(workspace, name));
  }
  // The places between are kept for what does not hang on the workshop as a whole.
  asked.set(4, shirtQuestion(workspace));
  asked.set(9, handQuestion(workspace));
  asked.set(
    11,
    partQuestion(
      workspace,
      otherTypicals.sheetPrice,
      'Every sheet that is printed, tests and spoiled ones too.',
      ['sheets', 0, 'price'],
      workspace.workshop.sheets[0]?.price,
    ),
  );
  const ordered = [...asked].toSorted(([a], [b]) => a - b).map(([, step]) => step);
  const isStranger = !typicalMoneyCurrencies.includes(workspace.workshop.currency);
  return isStranger ? [...ordered, ...amountSteps(workspace)] : ordered;
}

function catalogueStep({ workshop, setField }: ReadyWorkspace, name: RateName): StartQuestion {
  const { label, units, typical, changes } = rateDefinition(name);
  return {
    label,
    changes,
    units,
    limits: numberLimits(ratesSchema, [name, 'value']),
    typical,
    rate: workshop.rates[name],
    onCommit: (rate) => void setField({ kind: 'workshop' }, label, ['rates', name], rate),
  };
}

function shirtQuestion({ blanks, setField }: ReadyWorkspace): StartQuestion {
  const sizes = blanks[OWN_BLANK_ID]?.sizes ?? [];
  const first = sizes[0]?.price ?? null;
  const { typical } = blankTypicals.garment.price;
  return {
    label: 'A plain shirt, sizes S to XL',
    changes:
      'The largest cost of most orders. Larger sizes have prices of their own; you find them under Blanks.',
    units: ['money/piece'],
    limits: numberLimits(blankSizeSchema, ['price', 'value']),
    typical,
    rate: first,
    onCommit: (rate) => {
      const alike = sizes.map((size) =>
        size.price?.value === first?.value ? { ...size, price: rate } : size,
      );
      void setField({ kind: 'blank', id: OWN_BLANK_ID }, 'Price of a shirt', ['sizes'], alike);
    },
  };
}

function handQuestion({ jobs, setField }: ReadyWorkspace): StartQuestion {
  const placement = jobs.find(({ id }) => id === OWN_JOB_ID)?.job.lines[0]?.placements[0];
  const { label, unit, typical } = placementTypicals.flat.handMinutes;
  return {
    label,
    changes: 'Lay out, tape, press, lift: once for every print on every piece, so it counts on every order.',
    units: [unit],
    limits: numberLimits(placementSchema, ['handMinutes', 'value']),
    typical,
    rate: placement?.handMinutes ?? null,
    onCommit: (rate) =>
      void setField(
        { kind: 'job', id: OWN_JOB_ID },
        label,
        ['lines', 0, 'placements', 0, 'handMinutes'],
        rate,
      ),
  };
}

/** Where a rate of the first printer, press, sheet and so on stands in the workshop. */
type PartRatePath = {
  [List in 'printers' | 'presses' | 'sheets' | 'packagings' | 'channels']: readonly [
    List,
    0,
    RateKey<Workshop[List][number]>,
  ];
}['printers' | 'presses' | 'sheets' | 'packagings' | 'channels'];

function partQuestion(
  { setField }: ReadyWorkspace,
  { label, unit, typical }: TypicalRate,
  changes: string,
  path: PartRatePath,
  rate: Rate | null | undefined,
): StartQuestion {
  return {
    label,
    changes,
    units: [unit],
    limits: numberLimits(workshopSchema, [...path, 'value']),
    typical,
    rate: rate ?? null,
    onCommit: (next) => void setField({ kind: 'workshop' }, label, path, next),
  };
}

/** The amounts that are typical elsewhere and missing here. */
function amountSteps(workspace: ReadyWorkspace): readonly StartQuestion[] {
  const { presses, printers, packagings, channels } = workspace.workshop;
  const [press] = presses;
  const [printer] = printers;
  const wear = 'Spread over its life, it makes the wear of every piece.';
  return [
    partQuestion(workspace, pressTypicals.flat.price, wear, ['presses', 0, 'price'], press?.price),
    partQuestion(
      workspace,
      pressTypicals.flat.resale,
      'Only what it loses is wear.',
      ['presses', 0, 'resale'],
      press?.resale,
    ),
    partQuestion(
      workspace,
      pressTypicals.flat.protectivePaper,
      'A fresh sheet of it for every press.',
      ['presses', 0, 'protectivePaper'],
      press?.protectivePaper,
    ),
    partQuestion(
      workspace,
      pressTypicals.flat.tape,
      'A few strips for every press.',
      ['presses', 0, 'tape'],
      press?.tape,
    ),
    partQuestion(workspace, printerTypicals.price, wear, ['printers', 0, 'price'], printer?.price),
    partQuestion(
      workspace,
      printerTypicals.resale,
      'Only what it loses is wear.',
      ['printers', 0, 'resale'],
      printer?.resale,
    ),
    partQuestion(
      workspace,
      otherTypicals.packagingPerPiece,
      'Once for every piece.',
      ['packagings', 0, 'perPiece'],
      packagings[0]?.perPiece,
    ),
    catalogueStep(workspace, 'packagingPerOrder'),
    partQuestion(
      workspace,
      channelTypicals.order.cardFixedFee,
      'Once for every card payment.',
      ['channels', 0, 'cardFixedFee'],
      channels[0]?.cardFixedFee,
    ),
  ];
}
