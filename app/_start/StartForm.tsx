'use client';

import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import { PageHead } from '@/app/_controls/PageHead';
import { QuantityField } from '@/app/_fields/QuantityField';
import { QuantityRow } from '@/app/_fields/QuantityRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { makeWords, paperCardWords, pressCardWords } from '@/app/_words/start/startChoiceWords';
import { type StartingBlankName, startingBlankNames } from '@/lib/examples/blankPatterns';
import { paperChosen, papersOffered, pressChosen, pressesOffered } from '@/lib/examples/startChoices';
import { wantedPieces } from '@/shared/wantedPieces';
import { CardChoice } from './CardChoice';
import { MakeDrawing } from './MakeDrawing';
import { PlatenChoice, RollWidth } from './OwnSizes';
import { PaperDrawing } from './PaperDrawing';
import { PressDrawing } from './PressDrawing';
import styles from './Start.module.css';
import { StartAnswers } from './StartAnswers';
import { StartFigures } from './StartFigures';
import { StartPrice } from './StartPrice';
import type { Start } from './useStart';

/** Everything a first job is made of on one slip, and its price beside it. */
export function StartForm({ start }: Readonly<{ start: Start }>) {
  const { choices, choose, input, isFirst } = start;
  const formatter = formatterFor(useTextContext());
  const press = pressChosen(choices);
  const paper = paperChosen(choices);
  const [line] = input?.job.lines ?? [];
  const pieces = input === null ? 12 : wantedPieces(input.job.lines);
  const quantities = line?.quantities ?? [];
  const setQuantity = (size: string, quantity: number | null) =>
    choose({
      quantities: quantities.map((one) => (one.size === size ? { size, quantity: quantity ?? 0 } : one)),
    });
  const make = (wanted: StartingBlankName) =>
    // What was typed of a shirt says nothing of a mug.
    choose(
      wanted === choices.make ? {} : { make: wanted, quantities: null, blankPrice: null, handMinutes: null },
    );
  return (
    <>
      <PageHead
        title={isFirst ? 'Your first job' : 'Another job'}
        line={
          isFirst
            ? 'One tap, and a price stands. The rest can wait.'
            : 'One tap, and a price stands, with the figures of your workshop.'
        }
      />
      <div className={styles.page}>
        <Card>
          <CardSection numeral={1} heading="Your product" answer="What do you make?" id="start-make">
            <CardChoice
              legend="What do you make?"
              cards={startingBlankNames
                .filter((name) => name !== 'performance' && name !== 'tumbler')
                .map((value) => ({ value, label: makeWords[value], drawing: <MakeDrawing make={value} /> }))}
              value={choices.make}
              isChosen
              onChoose={make}
            />
          </CardSection>
          <CardSection numeral={2} heading="Heat" answer="Which press?" id="start-press">
            <CardChoice
              legend="Which press?"
              cards={pressesOffered(choices.make).map((value) => ({
                value,
                ...pressCardWords(value, choices, formatter),
                drawing: <PressDrawing press={value} />,
              }))}
              value={press}
              isChosen={choices.press === press}
              onChoose={(value) => choose({ press: value })}
            />
            {press === 'other' && <PlatenChoice choices={choices} onChoose={choose} />}
          </CardSection>
          <CardSection numeral={3} heading="Printer" answer="Which paper does it take?" id="start-paper">
            <CardChoice
              legend="Which paper does your printer take?"
              cards={papersOffered(choices.region).map((value) => ({
                value,
                ...paperCardWords(value, choices, formatter),
                drawing: <PaperDrawing paper={value} />,
              }))}
              value={paper}
              isChosen={choices.paper === paper}
              onChoose={(value) => choose({ paper: value })}
            />
            {paper === 'roll' && <RollWidth choices={choices} onChoose={choose} />}
          </CardSection>
          <CardSection
            numeral={4}
            heading="How many"
            answer={
              choices.quantities === null
                ? 'Twelve to begin with, in a typical mix'
                : formatter.count(pieces, 'piece')
            }
            id="start-pieces"
          >
            {line === undefined ? (
              <p className={styles.quiet}>The sizes stand here as soon as you say what you make.</p>
            ) : (
              <QuantityRow label="Pieces" total={formatter.number(pieces, 0)}>
                {quantities.map(({ size, quantity }) => (
                  <QuantityField
                    key={size}
                    label={size}
                    value={quantity}
                    onCommit={(value) => setQuantity(size, value)}
                  />
                ))}
              </QuantityRow>
            )}
          </CardSection>
          <CardSection
            numeral={5}
            heading="Your workshop"
            answer={isFirst ? 'Asked once, good for every job' : 'What this job needs to know'}
            id="start-workshop"
          >
            <StartAnswers choices={choices} choose={choose} isFirst={isFirst} />
          </CardSection>
          {isFirst && (
            <CardSection
              numeral={6}
              heading="Your figures"
              answer="All others are typical until you type them"
              id="start-figures"
            >
              <StartFigures choices={choices} choose={choose} input={input} />
            </CardSection>
          )}
        </Card>
        <StartPrice start={start} />
      </div>
    </>
  );
}
