import type { BuyingList } from '@/shared/schemas/making/supply';

/** @returns what stands beside a list's name. */
export function listLine({ works }: Pick<BuyingList, 'works'>, orders: number): string {
  const jobs = works.length === 1 ? 'one job' : `${works.length} jobs`;
  const sent =
    orders === 0 ? 'nothing ordered yet' : orders === 1 ? 'one order sent' : `${orders} orders sent`;
  return `${jobs} · ${sent}`;
}

/** Two lists of one name could not be told apart. */
export const listNameTaken = (free: string): string =>
  `A list is called so already: “${free}” would tell them apart.`;

/** @returns what is bought for, and what it is where that is no order that was accepted. */
export function workWords(name: string, kind: 'order' | 'run' | 'asked' | 'job'): string {
  const what = { order: '', run: ', a run', asked: ', not accepted yet', job: '' };
  return `${name}${what[kind]}`;
}
