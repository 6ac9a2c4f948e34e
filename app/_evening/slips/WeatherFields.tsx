import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { weatherLabel, weatherWas } from '@/app/_words/stall/evening/weatherWords';
import { daysInOrder } from '@/lib/stall/sellingDays';

/** What each day was like; one that changed says for how long it was what, until the maker says it was one. */
export function WeatherFields({ on }: Readonly<{ on: EveningOnScreen }>) {
  const { evening, answers, say, formatter, locale } = on;
  const { plan, weather } = evening;
  return daysInOrder(plan).map(({ day }) => {
    const parts = weather.parts.filter((one) => one.day === day);
    const [only, ...others] = parts;
    return (
      <ChoiceField
        key={day}
        label={weatherLabel(plan.days.length > 1 ? formatter.day(day) : null)}
        width="narrow"
        value={others.length === 0 ? (only?.weatherId ?? null) : null}
        hint={others.length === 0 ? undefined : weatherWas(parts, plan.weathers, locale)}
        choices={plan.weathers.map(({ id, name }) => ({ value: id, label: name }))}
        onCommit={(id) => say({ weatherOfDays: { ...answers.weatherOfDays, [day]: id } })}
      />
    );
  });
}
