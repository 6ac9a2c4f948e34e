import { Button } from '@/app/_controls/Button';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { ShopStanding } from '@/lib/stall/shops/shopStanding';
import type { ShopOnScreen } from './shopOnScreen';

type PaymentsProps = Readonly<{
  on: ShopOnScreen;
  label: string;
  payments: ShopStanding['credits'];
  takeBack: (what: string, ids: readonly string[]) => void;
}>;

/** Money that came, each taken back by itself where it was noted wrongly. */
export function Payments({ on: { workspace, formatter, locale }, label, payments, takeBack }: PaymentsProps) {
  if (payments.length === 0) return null;
  return (
    <RowList label={label}>
      {payments.map(({ id, body: { day, amountMinor, currency } }) => {
        const money = minorMoney(amountMinor, currency, locale);
        const what = `the payment of ${money} of ${formatter.day(day)}`;
        return (
          <ListRow
            key={workspace.firstId(id)}
            acts={
              <Button kind="quiet" spoken={`Take back ${what}`} onPress={() => takeBack(what, [id])}>
                Take back the payment
              </Button>
            }
          >
            {money} paid on {formatter.day(day)}
          </ListRow>
        );
      })}
    </RowList>
  );
}
