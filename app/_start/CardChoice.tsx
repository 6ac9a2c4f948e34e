'use client';

import { type ReactNode, useId } from 'react';
import styles from './CardChoice.module.css';

interface ChoiceCard<Value extends string> {
  readonly value: Value;
  readonly label: string;
  /** Its size, under the name. */
  readonly small?: string;
  readonly drawing: ReactNode;
}

type CardChoiceProps<Value extends string> = Readonly<{
  /** The question, for who does not see the heading. */
  legend: string;
  cards: readonly ChoiceCard<Value>[];
  /** Null while nothing is chosen and nothing is usual. */
  value: Value | null;
  /** False where the value is only what is usual: it is shown dashed until somebody takes it. */
  isChosen: boolean;
  onChoose: (value: Value) => void;
}>;

/** One of a few things, each drawn on a card. */
export function CardChoice<Value extends string>(props: CardChoiceProps<Value>) {
  const { legend, cards, value, isChosen, onChoose } = props;
  const name = useId();
  return (
    <fieldset className={styles.set}>
      <legend className="visuallyHidden">{legend}</legend>
      {cards.map((card) => (
        <label
          key={card.value}
          className={styles.card}
          data-state={card.value !== value ? undefined : isChosen ? 'chosen' : 'usual'}
        >
          <input
            className={styles.radio}
            type="radio"
            name={name}
            value={card.value}
            checked={card.value === value}
            onChange={() => onChoose(card.value)}
            // What is usual is checked already: pressing it makes it chosen.
            onClick={() => onChoose(card.value)}
          />
          <span className={styles.drawing}>{card.drawing}</span>
          <span className={styles.label}>{card.label}</span>
          {card.small !== undefined && <span className={styles.small}>{card.small}</span>}
        </label>
      ))}
    </fieldset>
  );
}
