'use client';

import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import type { Workshop } from '@/shared/schemas/workshop';
import { RateLines } from './RateLines';
import styles from './WorkshopParts.module.css';
import type { WorkshopFields } from './workshopFields';

/** Where the press is plugged in. */
export function PowerSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const first = firstCircuit(workshop);
  return (
    <>
      <RateLines fields={fields} groups={['power']} />
      <h3 className={styles.sub} id={workshopFieldId(['circuit'])} tabIndex={-1}>
        The circuit of the press
      </h3>
      {workshop.circuit === null ? (
        <>
          <p className={styles.words}>
            Not yet said, so nobody can tell you whether press, printer and kettle together are too much for
            it.
          </p>
          <Button onPress={() => set('Circuit', ['circuit'], first)}>
            Begin with {first.volts} V and {first.amps} A
          </Button>
        </>
      ) : (
        <CircuitFields circuit={workshop.circuit} set={set} />
      )}
      <Advice severity="caution">
        Plug the press straight into the wall, not into an extension lead. Local code rules what a circuit may
        carry: ask a licensed electrician.
      </Advice>
    </>
  );
}

// Helpers

type Circuit = NonNullable<Workshop['circuit']>;

function CircuitFields({ circuit, set }: Readonly<{ circuit: Circuit; set: WorkshopFields['set'] }>) {
  const commit = (key: keyof Circuit, label: string) => (value: number | null) =>
    set(label, ['circuit', key], value);
  return (
    <>
      <FieldGroup pairs>
        <NumberField
          label="Voltage"
          id={workshopFieldId(['circuit', 'volts'])}
          width="narrow"
          unit="V"
          value={circuit.volts}
          needed
          min={50}
          max={1000}
          onCommit={commit('volts', 'Voltage')}
        />
        <NumberField
          label="Breaker or fuse"
          id={workshopFieldId(['circuit', 'amps'])}
          width="narrow"
          unit="A"
          value={circuit.amps}
          needed
          above={0}
          max={200}
          onCommit={commit('amps', 'Breaker')}
        />
        <NumberField
          label="Everything else on it"
          id={workshopFieldId(['circuit', 'otherWatts'])}
          width="narrow"
          unit="W"
          value={circuit.otherWatts}
          needed
          min={0}
          max={50_000}
          hint="Heater, kettle, lamps."
          onCommit={commit('otherWatts', 'Other watts')}
        />
      </FieldGroup>
      <Button kind="quiet" onPress={() => set('Circuit', ['circuit'], null)}>
        Leave it unsaid
      </Button>
    </>
  );
}

/** What a plain socket is most often on, by the maker's units. */
const firstCircuit = ({ units }: Workshop): Circuit =>
  units.temperature === 'F' || units.length === 'in'
    ? { volts: 120, amps: 15, otherWatts: 0 }
    : { volts: 230, amps: 16, otherWatts: 0 };
