import { expect, it } from 'vitest';
import { idInAddress } from '@/app/_documents/useIdInAddress';

it.each([
  ['/jobs/club-order', 'club-order'],
  ['/jobs/club-order/sheet', 'club-order'],
  ['/jobs/a%20b', 'a b'],
  ['/jobs/%C3%A4', 'ä'],
  // A percent sign that stands for no letter (RFC 3986, 2.1) is left as it is: no document has such an id.
  ['/jobs/100%', '100%'],
  ['/jobs', ''],
  ['/price-lists/spring', ''],
])('reads of %s that the job “%s” is meant', (path, id) => {
  expect(idInAddress(path, '/jobs/')).toBe(id);
});
