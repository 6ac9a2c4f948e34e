/**
 * The order of a list that two sides changed: the side that moved items decides, and items which only the
 * other side has come in behind the neighbour they had there.
 *
 * @returns the identities in order, and whether both sides moved items differently (then mine decides)
 */
export function mergeOrder(
  base: readonly string[],
  mine: readonly string[],
  theirs: readonly string[],
): { readonly order: readonly string[]; readonly bothMoved: boolean } {
  const mineMoved = moved(base, mine);
  const theirsMoved = moved(base, theirs);
  const [lead, follow] = theirsMoved && !mineMoved ? [theirs, mine] : [mine, theirs];
  const order = [...lead];
  for (const [index, id] of follow.entries()) {
    if (order.includes(id)) continue;
    const neighbour = follow.slice(0, index).findLast((before) => order.includes(before));
    order.splice(neighbour === undefined ? 0 : order.indexOf(neighbour) + 1, 0, id);
  }
  return { order, bothMoved: mineMoved && theirsMoved && moved(mine, theirs) };
}

function moved(from: readonly string[], to: readonly string[]): boolean {
  const kept = from.filter((id) => to.includes(id));
  const now = to.filter((id) => from.includes(id));
  return kept.some((id, index) => now[index] !== id);
}
