'use client';

import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useTypedNumber } from '@/app/_fields/useTyped';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { expectedHints } from '@/app/_words/press/expectedHints';
import { worthWords } from '@/app/_words/press/testWords';
import type { RecipeLog } from '@/lib/pressing/recipeLogs';
import { testExpected } from '@/lib/pressing/testExpected';
import { testAskedSchema, testWorth } from '@/lib/pressing/testWorth';
import { numberLimits } from '@/shared/limits';

type WorthPartProps = Readonly<{ workspace: ReadyWorkspace; log: RecipeLog }>;

/** Pieces that go by before a fault is seen; from memory. */
const PIECES_BEFORE_SEEN = 5;

/**
 * Whether a test press pays: what it saves on average against what it costs. It begins with what the log and the newest
 * run say, and each figure says where it is from until the maker types another.
 */
export function WorthPart({ workspace, log }: WorthPartProps) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const form = { orderId: 'press-log', name: `test worth ${log.key}`, isErased: false };
  const known = testExpected(log, workspace.papers.runStandard, context.currency);
  const { piece } = known;
  const doubt = useTypedNumber(form, 'doubt', known.doubt);
  const pieces = useTypedNumber(form, 'pieces', PIECES_BEFORE_SEEN);
  const loss = useTypedNumber(form, 'loss', piece?.whole ?? null);
  const cost = useTypedNumber(form, 'cost', piece?.withoutBlank ?? null);
  const hints = expectedHints(known, formatter);
  const hint = (
    of: keyof typeof hints,
    { value }: { readonly value: number | null },
    fresh: number | null | undefined,
  ) => (value !== null && value === fresh ? (hints[of] ?? undefined) : undefined);
  const isTyped = doubt.value !== null && pieces.value !== null && loss.value !== null && cost.value !== null;
  const worth = isTyped
    ? testWorth({
        ...{ doubt: doubt.value ?? 0, piecesAtRisk: pieces.value ?? 0 },
        ...{ lossEach: loss.value ?? 0, cost: cost.value ?? 0 },
      })
    : null;
  return (
    <>
      <FieldGroup>
        <MeasureField
          label="Chance that the recipe is wrong"
          kind="share"
          {...numberLimits(testAskedSchema, ['doubt'])}
          hint={hint('doubt', doubt, known.doubt)}
          {...doubt}
        />
        <NumberField
          label="Pieces pressed before you would notice"
          {...numberLimits(testAskedSchema, ['piecesAtRisk'])}
          hint={hint('pieces', pieces, PIECES_BEFORE_SEEN)}
          {...pieces}
        />
        <NumberField
          label="Lost with one of them"
          unit={context.currency}
          {...numberLimits(testAskedSchema, ['lossEach'])}
          hint={hint('loss', loss, piece?.whole)}
          {...loss}
        />
        <NumberField
          label="Cost of the test: sheet, cloth, minutes"
          unit={context.currency}
          {...numberLimits(testAskedSchema, ['cost'])}
          hint={hint('cost', cost, piece?.withoutBlank)}
          {...cost}
        />
      </FieldGroup>
      <p>
        {worth === null
          ? 'Fill in all four.'
          : worthWords(formatter.money(worth.saves), formatter.money(cost.value ?? 0), worth.isWorth)}
      </p>
    </>
  );
}
