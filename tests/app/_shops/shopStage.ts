import '@/tests/app/_screens/stage';
import { beforeEach, vi } from 'vitest';

/* The page of a shop. */

const router = vi.hoisted(() => ({ push: vi.fn<(href: string) => void>() }));
vi.mock('next/navigation', () => ({
  usePathname: () => '/stall/shops/corner',
  useRouter: () => ({ push: router.push }),
}));

/** Where the screen led to during a test. */
export const { push } = router;

beforeEach(() => {
  push.mockClear();
});
