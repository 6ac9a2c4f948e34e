import '@/tests/app/_screens/stage';
import { beforeEach, vi } from 'vitest';
import { stubWorker } from './runDesk';

/* The pages of runs, with the real sums. */

const router = vi.hoisted(() => ({ push: vi.fn<(href: string) => void>() }));
vi.mock('next/navigation', () => ({
  useRouter: () => ({ push: router.push }),
  usePathname: () => '/making',
}));
vi.mock('@/app/_studies/shareStudyWorker', async () => (await import('./runDesk')).studiesHere());

/** Where the screen led to during a test. */
export const { push } = router;

beforeEach(() => {
  push.mockClear();
  stubWorker();
  // After the screen is gone, for it looks at them until then.
  return () => vi.unstubAllGlobals();
});
