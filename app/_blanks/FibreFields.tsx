'use client';

import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { MeasureField } from '@/app/_fields/MeasureField';
import { fibreWords } from '@/app/_words/workshop/blankWords';
import { fibres as allFibres, type Blank } from '@/shared/schemas/blank';
import styles from './Blanks.module.css';
import type { BlankFields } from './blankFields';

type Fibres = Blank['fibres'];

/** The fibres of a cloth with their shares. */
export function FibreFields({ fields: { blank, set, fieldId } }: Readonly<{ fields: BlankFields }>) {
  const { fibres } = blank;
  const free = allFibres.filter((name) => !fibres.some(({ fibre }) => fibre === name));
  const [next] = free;
  const write = (entries: Fibres) => set(`Fibres of ${blank.name}`, ['fibres'], entries);
  return (
    <div id={fieldId('fibres')} tabIndex={-1}>
      {fibres.map(({ fibre, share }, index) => (
        <div key={fibre} className={styles.row}>
          <ChoiceField
            label="Fibre"
            width="full"
            value={fibre}
            choices={allFibres
              .filter((name) => name === fibre || free.includes(name))
              .map((value) => ({ value, label: fibreWords[value] }))}
            onCommit={(chosen) =>
              write(fibres.map((entry, at) => (at === index ? { ...entry, fibre: chosen } : entry)))
            }
          />
          <MeasureField
            label={`Share of ${fibreWords[fibre].toLowerCase()}`}
            id={fieldId('fibres', index, 'share')}
            width="full"
            kind="share"
            value={share}
            needed
            min={0}
            max={1}
            onCommit={(value) => set(`Fibres of ${blank.name}`, ['fibres', index, 'share'], value)}
          />
          <div className={styles.act}>
            <Button
              kind="quiet"
              onPress={() => {
                focusById(fieldId('fibres'));
                write(fibres.filter((_, at) => at !== index));
              }}
            >
              Remove <span className="visuallyHidden">{fibreWords[fibre]}</span>
            </Button>
          </div>
        </div>
      ))}
      {next !== undefined && (
        <Button onPress={() => write([...fibres, { fibre: next, share: fibres.length === 0 ? 1 : 0 }])}>
          Add a fibre
        </Button>
      )}
    </div>
  );
}
