import type { ResolvedJob } from '@/lib/job/checkedJob';
import type { UsedRate } from '@/lib/job/usedRate';
import type { Finding } from '@/shared/finding';

/** What a rule may look at. */
export interface Scene {
  readonly resolved: ResolvedJob;
  readonly usedRates: readonly UsedRate[];
}

/** A rule looks at a job and tells what it finds; it never changes anything. */
export type Rule = (scene: Scene) => readonly Finding[];
