/** Whatever a run is told by: one of them that cannot be read is missing in its counts and its money. */
export const runKinds: ReadonlySet<string> = new Set([
  ...['run', 'runStandard', 'pressing', 'sheetsPrinted', 'blankFault', 'runStep', 'runActual', 'hours'],
  ...['pressTest', 'rateTaken', 'takeBack'],
]);
