export interface Choice<Value extends string = string> {
  readonly value: Value;
  readonly label: string;
  /** Name of the group it is listed in, after those that have none. */
  readonly group?: string | undefined;
}

/** The entries of a list to choose from, those of a group together under its name. */
export function Options({ choices }: Readonly<{ choices: readonly Choice[] }>) {
  const groups = [...new Set(choices.flatMap(({ group }) => group ?? []))];
  return (
    <>
      {choices.filter(({ group }) => group === undefined).map(option)}
      {groups.map((group) => (
        <optgroup key={group} label={group}>
          {choices.filter((choice) => choice.group === group).map(option)}
        </optgroup>
      ))}
    </>
  );
}

// Helpers

const option = ({ value, label }: Choice) => (
  <option key={value} value={value}>
    {label}
  </option>
);
