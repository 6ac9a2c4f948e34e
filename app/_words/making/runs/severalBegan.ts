/** Said wherever a run is looked at that has two standards in force. */
export const severalBegan =
  'Two devices each began this run. The newest standard counts; what each noted counts as well.';
