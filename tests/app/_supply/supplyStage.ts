import '@/tests/app/_screens/stage';
import { vi } from 'vitest';

/* The places of buying. */

vi.mock('next/navigation', () => ({
  usePathname: () => '/making/suppliers',
  useRouter: () => ({ push: () => undefined }),
  useSearchParams: () => new URLSearchParams(),
}));
