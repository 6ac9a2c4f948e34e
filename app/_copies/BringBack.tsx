import { Arrived } from './Arrived';
import { BringIn } from './BringIn';
import type { Arriving } from './useArriving';

/** Brings a copy back where nothing is here. */
export const BringBack = ({ arriving }: Readonly<{ arriving: Arriving }>) => (
  <>
    <BringIn arriving={arriving} button="Bring a copy back" kind="strong" />
    {/* What came in and was taken away again by the undo of the header is not here. */}
    {!(arriving.state.kind === 'told' && arriving.undo === null) && <Arrived arriving={arriving} level={2} />}
  </>
);

/** Above the screen that came back with the copy: what came in, and the way back until something else is done. */
export const BroughtBack = ({ arriving }: Readonly<{ arriving: Arriving }>) =>
  arriving.undo !== null || arriving.state.kind === 'looked' ? (
    <Arrived arriving={arriving} level={2} />
  ) : null;
