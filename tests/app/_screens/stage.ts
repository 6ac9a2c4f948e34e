import { cleanup } from '@testing-library/react';
import { afterEach, vi } from 'vitest';
import { clearScreens } from '@/tests/app/_screens/screens';

/* What every screen with documents is tested on: the store of `screens.tsx` in place of the device's, and nothing of
 * a test left for the next. Import it before anything of `app/`, which otherwise has the device's store already. */

vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});

afterEach(() => {
  cleanup();
  clearScreens();
});
