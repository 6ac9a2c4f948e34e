import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { paperNumberText } from '@/app/_words/paperNumberText';
import type { OrderLine } from '@/shared/schemas/order';
import type { OrderFields } from './orderFields';
import { withLine } from './withLine';

type LinePricesProps = Readonly<{ of: OrderOnPaper; fields: OrderFields }>;

/** Where the price of each line comes from: its job, or a version of a price list that went out. */
export function LinePrices({ of, fields }: LinePricesProps) {
  const { workspace, formatter, today, goods } = of;
  const versions = workspace.papers.priceListVersion.filter(({ withdrawn }) => !withdrawn);
  return goods.jobs.flatMap(({ jobId, input }) =>
    input.job.lines.map((line) => {
      const kept = fields.order.lines.find((one) => one.jobId === jobId && one.lineId === line.id);
      const price = kept?.price ?? { from: 'job' as const };
      const offers = versions.flatMap(({ id, number, body }) =>
        body.items
          .filter((item) => item.lineId === line.id || item.name === line.name)
          .map((item) => ({
            value: JSON.stringify([id, item.id]),
            label: `${item.name}, list version ${paperNumberText(number)}, valid until ${formatter.day(
              body.validUntil,
            )}${body.validUntil < today ? ' (over)' : ''}`,
          })),
      );
      const chosen = price.from === 'job' ? 'job' : JSON.stringify([price.paperId, price.itemId]);
      const isKnown = chosen === 'job' || offers.some(({ value }) => value === chosen);
      if (offers.length === 0 && isKnown) return null;
      return (
        <ChoiceField
          key={`${jobId} ${line.id}`}
          id={`quote-price-${line.id}`}
          label={`Price of ${line.name}`}
          width="full"
          value={chosen}
          choices={[
            { value: 'job', label: 'As its job asks' },
            ...offers,
            ...(isKnown ? [] : [{ value: chosen, label: 'A list that is not here or was withdrawn' }]),
          ]}
          onCommit={(value) =>
            fields.change(`Price of ${line.name}`, (now) => ({
              ...now,
              lines: withLine(now.lines, { jobId, lineId: line.id }, { price: priceOf(value) }),
            }))
          }
        />
      );
    }),
  );
}

// Helpers

function priceOf(value: string): OrderLine['price'] {
  if (value === 'job') return { from: 'job' };
  const parsed: unknown = JSON.parse(value);
  const [paperId, itemId] = Array.isArray(parsed) ? parsed.map(String) : [];
  return paperId === undefined || itemId === undefined ? { from: 'job' } : { from: 'list', paperId, itemId };
}
