import '@/tests/app/_screens/stage';
import { beforeEach, vi } from 'vitest';
import { openDialogs } from '@/tests/tools/openDialogs';

/* The page the count is tested on. */

vi.mock('next/navigation', () => ({
  usePathname: () => '/stall/spring-fair/count',
  useRouter: () => ({ push: () => undefined }),
}));

beforeEach(openDialogs);
