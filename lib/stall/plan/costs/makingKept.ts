import type { Grid } from '@/lib/grid/evaluateGrid';
import type { JobInput } from '@/shared/schemas/request';
import { type MakingCosts, makingCosts } from './makingCosts';

/** Most jobs kept: those of a large fair. */
const KEPT = 40;

/**
 * Keeps what jobs cost from one question to the next, so that a number that is typed puts only what is pressed through
 * the grid and no job whose documents stand as they stood. One instance a thread; what it gives is what `makingCosts`
 * gives.
 */
export class MakingKept {
  readonly #kept = new Map<string, { readonly input: string; readonly costs: MakingCosts | null }>();

  /** @returns null where a stop stands or a sum gives no number */
  of(jobId: string, input: JobInput, grid: Grid): MakingCosts | null {
    const written = JSON.stringify(input);
    const kept = this.#kept.get(jobId);
    const found = kept?.input === written ? kept : { input: written, costs: makingCosts(jobId, input, grid) };
    this.#kept.delete(jobId);
    this.#kept.set(jobId, found);
    const oldest = this.#kept.keys().next();
    if (this.#kept.size > KEPT && oldest.done !== true) this.#kept.delete(oldest.value);
    return found.costs;
  }
}
