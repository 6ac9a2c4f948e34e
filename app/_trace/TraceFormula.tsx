'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import type { FigureRef, Trace } from '@/lib/grid/traceFigure';
import { formatNumber } from '@/shared/formatNumber';
import { type FigureNames, figureName } from './figureName';
import { figureWords } from './figureWords';
import { formulaWords, type Term } from './formulaWords';
import { isTyped } from './isTyped';
import type { Phrase } from './phrase';
import { TraceChip } from './TraceChip';
import styles from './TraceFormula.module.css';

type TraceFormulaProps = Readonly<{
  trace: Trace;
  names: FigureNames;
  onOpen: (ref: FigureRef) => void;
}>;

/** More summands than this fold; the rest is a press away. */
const SHOWN = 5;

/** A formula in words, its operands as chips that open; a long sum is a list and folds. */
export function TraceFormula({ trace, names, onOpen }: TraceFormulaProps) {
  const [unfolded, setUnfolded] = useState(false);
  const terms = formulaWords(trace.parts);
  const ofSizes = trace.kind === 'sum';
  const write = (term: Term) => <Phrases {...{ term, names, ofSizes, onOpen }} />;
  const [only] = terms;
  if (terms.length === 1 && only !== undefined) return <p className={styles.line}>= {write(only)}</p>;
  // Folding away a single summand would take as much room as showing it.
  const folds = !unfolded && terms.length > SHOWN + 1;
  const shown = folds ? terms.slice(0, SHOWN) : terms;
  return (
    <div>
      <ul className={styles.terms}>
        {shown.map((term, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: summands have no name, and their order is the formula's
          <li className={styles.line} key={index}>
            <span className={styles.sign}>{index === 0 ? '=' : term.sign}</span>
            {write(term)}
          </li>
        ))}
      </ul>
      {folds && (
        <Button kind="quiet" onPress={() => setUnfolded(true)}>
          and {terms.length - SHOWN} more to add
        </Button>
      )}
    </div>
  );
}

type PhrasesProps = Readonly<{
  term: Term;
  names: FigureNames;
  ofSizes: boolean;
  onOpen: (ref: FigureRef) => void;
}>;

function Phrases({ term, names, ofSizes, onOpen }: PhrasesProps) {
  const context = useTextContext();
  const write = (phrase: Phrase) => {
    switch (phrase.kind) {
      case 'words':
        return `${phrase.text} `;
      case 'number':
        return `${formatNumber(phrase.value, context.locale)} `;
      case 'bracket':
        return phrase.side === 'open' ? '(' : ') ';
      case 'chip': {
        const { ref, label, value, unit } = phrase.part;
        const counts = ref.rowId === 'quantity';
        // In a sum over sizes the heading has said what is added: “Pieces in L 11 × each 3.58”.
        const name = ofSizes && !counts ? 'each' : figureName(names, ref, label);
        return (
          <TraceChip
            label={name}
            value={figureWords(value, ofSizes && counts ? 'number' : unit, context)}
            typed={isTyped(names.sheet, ref)}
            onOpen={() => onOpen(ref)}
          />
        );
      }
      default:
        return phrase satisfies never;
    }
  };
  return (
    <>
      {term.phrases.map((phrase, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the order of a formula is fixed
        <span className={phrase.kind === 'bracket' ? styles[phrase.side] : undefined} key={index}>
          {write(phrase)}
        </span>
      ))}
    </>
  );
}
