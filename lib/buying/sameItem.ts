import type { SupplyItem } from '@/shared/schemas/supply';
import { supplyKey } from './supplyKey';

/** @returns whether two things that are bought are the same. */
export const sameItem = (one: SupplyItem, other: SupplyItem): boolean => supplyKey(one) === supplyKey(other);
