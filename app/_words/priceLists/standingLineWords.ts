import type { ItemStanding } from '@/app/_priceLists/useListStates';
import type { Formatter } from '@/app/_words/formatter';

/** @returns how a version stands, in a few words that take one line whatever they say. */
export function standingLine(standings: readonly ItemStanding[], formatter: Formatter): string {
  if (standings.some(({ kind }) => kind === 'asked')) return 'prices are being looked at';
  const worn = standings.reduce((sum, one) => sum + (one.kind === 'compared' ? one.worn.length : 0), 0);
  const lost = standings.filter(({ kind }) => kind !== 'compared').length;
  const told = [
    worn > 0 && `${formatter.count(worn, 'price')} no longer ${worn === 1 ? 'holds' : 'hold'}`,
    lost > 0 && `${formatter.count(lost, 'item')} cannot be compared`,
  ].filter((part) => part !== false);
  return told.length === 0 ? 'all prices hold' : told.join(', ');
}
