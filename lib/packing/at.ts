/**
 * The value at a place that must exist.
 *
 * @throws RangeError where it does not: a sum of ours went wrong
 */
export function at<Value>(
  values: { readonly [index: number]: Value; readonly length: number },
  index: number,
): Value {
  const value = values[index];
  if (value === undefined) throw new RangeError(`place ${index} of ${values.length} is empty`);
  return value;
}
