/** @returns what undo calls the step that took a file in. */
export const arrivalLabel = (mode: 'beside' | 'replace', file: string): string =>
  mode === 'replace' ? `Put “${file}” in place of everything` : `Bring “${file}” in`;

/** @returns whether a step, by what it is called, took a file in, and with it whatever lay in it. */
export const isOfFile = (label: string): boolean =>
  /^(?:Put “.*” in place of everything|Bring “.*” in)$/.test(label);
