'use client';

import { Button } from '@/app/_controls/Button';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { Finder } from '@/app/_fields/Finder';
import type { Formatter } from '@/app/_words/formatter';
import { turnChoices } from '@/app/_words/orders/board/boardWords';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import styles from './BoardFinder.module.css';

/** Which orders are looked at. */
export interface OrdersWanted {
  readonly text: string;
  readonly turn: BoardOrder['turn']['turn'] | 'all';
  readonly shown: 'open' | 'closed';
}

type BoardFinderProps = Readonly<{
  /** The id of the field in which one types what is looked for. */
  fieldId: string;
  wanted: OrdersWanted;
  found: number;
  /** How many more are found among those that are not looked at. */
  elsewhere: number;
  closedCount: number;
  onWanted: (wanted: OrdersWanted) => void;
  formatter: Formatter;
}>;

/** Finds an order, by whose turn it is, among those on the board or those that are over. */
export function BoardFinder(props: BoardFinderProps) {
  const { fieldId, wanted, found, elsewhere, closedCount, onWanted, formatter } = props;
  const isClosed = wanted.shown === 'closed';
  const isNarrowed = wanted.text.trim() !== '' || (!isClosed && wanted.turn !== 'all');
  const other = isClosed ? 'open' : 'closed';
  return (
    <div className={styles.finder}>
      <Finder
        id={fieldId}
        label="Find a name, number or day"
        text={wanted.text}
        onText={(text) => onWanted({ ...wanted, text })}
        beside={
          !isClosed && (
            <div className={styles.turn}>
              <ChoiceField
                label="Whose turn"
                labelled
                width="full"
                value={wanted.turn}
                choices={turnChoices}
                onCommit={(turn) => onWanted({ ...wanted, turn })}
              />
            </div>
          )
        }
        also={
          closedCount > 0 || isClosed
            ? {
                words: `Closed, ${formatter.number(closedCount)}`,
                isShown: isClosed,
                onShown: () => onWanted({ ...wanted, shown: other }),
              }
            : null
        }
        result={
          <>
            {isNarrowed && `${found === 0 ? 'No order' : formatter.count(found, 'order')} found`}
            {isNarrowed &&
              elsewhere > 0 &&
              `, ${formatter.number(elsewhere)} among the ${isClosed ? 'open' : 'closed'} ones`}
          </>
        }
      >
        {isNarrowed && elsewhere > 0 && (
          <Button kind="quiet" onPress={() => onWanted({ ...wanted, turn: 'all', shown: other })}>
            Show {elsewhere === 1 ? 'it' : 'them'}
          </Button>
        )}
        {isNarrowed && found === 0 && (
          <Button kind="quiet" onPress={() => onWanted({ ...wanted, text: '', turn: 'all' })}>
            Show all
          </Button>
        )}
      </Finder>
    </div>
  );
}
