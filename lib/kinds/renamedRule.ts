/** @returns the name that a rule of reckoning orders bears now; anything else as it is, for the schema to judge. */
export function renamedRule(rule: unknown): unknown {
  if (rule === 'cap') return 'capped';
  return rule === 'tariff' ? 'setUpApart' : rule;
}
