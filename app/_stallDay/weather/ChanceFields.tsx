'use client';

import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { stallFieldId } from '@/app/_documents/fieldAddress';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { RateField } from '@/app/_fields/RateField';
import { TextField } from '@/app/_fields/TextField';
import { YesNoField } from '@/app/_fields/YesNoField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import type { Formatter } from '@/app/_words/formatter';
import { chanceSumWords, learnedWords } from '@/app/_words/stall/chanceWords';
import { whenWeather } from '@/app/_words/stall/weatherWords';
import { learnedFactors } from '@/lib/stall/plan/demand/learnedFactors';
import { offeredFactor } from '@/lib/stall/plan/demand/offeredFactor';
import { mostEntries, numberLimits, textLimits } from '@/shared/limits';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import styles from './Weather.module.css';

const most = mostEntries(stallDaySchema, ['weathers']);

/** How likely each weather is, and what it leaves of the sales of the best day. */
export function ChanceFields({ on }: Readonly<{ on: StallOnScreen }>) {
  const { stallDay, set, change, formatter, before, today } = on;
  const { weathers, isOutdoor } = stallDay;
  const trouble = chanceSumWords(weathers, formatter);
  const learned = learnedFactors(weathers, before.past);
  const take = (at: number, name: string, value: number) => {
    typing.ends();
    set(`What ${name} leaves`, ['weathers', at, 'factor'], {
      value,
      unit: 'share',
      date: today,
      origin: 'measured',
    });
  };
  const remove = (weatherId: string, name: string) => {
    typing.ends();
    change(`Remove ${name}`, (now) => ({
      ...now,
      weathers: now.weathers.filter((one) => one.id !== weatherId),
    }));
  };
  return (
    <>
      <YesNoField
        label="In the open"
        id={stallFieldId(['isOutdoor'])}
        value={isOutdoor}
        hint="Under a roof one weather with a factor of 100 % is enough."
        onCommit={(to) => set('In the open', ['isOutdoor'], to)}
      />
      <ul className={styles.chances} id={stallFieldId(['weathers'])}>
        {weathers.map(({ id: weatherId, name, chance, factor }, at) => (
          <li key={weatherId} className={styles.chance}>
            <TextField
              label="Weather"
              width="full"
              needed
              value={name}
              {...textLimits(stallDaySchema, ['weathers', 0, 'name'])}
              onCommit={(to) => set('Name of a weather', ['weathers', at, 'name'], to)}
            />
            <RateField
              label={`How likely ${name} is`}
              id={stallFieldId(['weathers', at, 'chance'])}
              rate={chance}
              units={['share']}
              typical={null}
              limits={numberLimits(stallDaySchema, ['weathers', 0, 'chance', 'value'])}
              onCommit={(to) => set(`How likely ${name} is`, ['weathers', at, 'chance'], to)}
            />
            <div className={styles.leaves}>
              <RateField
                label={`Share that still buys ${whenWeather(name)}`}
                id={stallFieldId(['weathers', at, 'factor'])}
                rate={factor}
                units={['share']}
                typical={null}
                limits={numberLimits(stallDaySchema, ['weathers', 0, 'factor', 'value'])}
                onCommit={(to) => set(`What ${name} leaves`, ['weathers', at, 'factor'], to)}
              />
              <LearnedOffer
                learned={learned.find((one) => one.weatherId === weatherId)}
                onTake={(value) => take(at, name, value)}
                formatter={formatter}
              />
            </div>
            <Button kind="quiet" spoken={`Remove ${name}`} onPress={() => remove(weatherId, name)}>
              Remove
            </Button>
          </li>
        ))}
      </ul>
      {trouble !== null && <Advice severity="caution">{trouble}</Advice>}
      <Button
        blockedBy={weathers.length >= most ? `${most} weathers are the most there can be.` : undefined}
        onPress={() => {
          typing.ends();
          set('Add a weather', ['weathers', weathers.length], {
            id: newId(),
            name: 'other',
            chance: null,
            factor: null,
          });
        }}
      >
        Add a weather
      </Button>
    </>
  );
}

// Helpers

type LearnedOfferProps = Readonly<{
  learned: ReturnType<typeof learnedFactors>[number] | undefined;
  onTake: (value: number) => void;
  formatter: Formatter;
}>;

/** What days before say of a weather: an offer, which nothing takes by itself. */
function LearnedOffer({ learned, onTake, formatter }: LearnedOfferProps) {
  const words = learned === undefined ? null : learnedWords(learned, formatter);
  if (learned === undefined || words === null) return null;
  return <Button onPress={() => onTake(offeredFactor(learned.learned))}>{words}</Button>;
}
