import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { openTabMessages } from '@/app/_tab/tabMessages';
import { eventually } from '@/tests/tools/eventually';

describe('openTabMessages', () => {
  it('hears what other tabs wrote, and not what this one did', async () => {
    const heard = vi.fn();
    const heardThere = vi.fn();
    const here = openTabMessages('talk', heard);
    const there = openTabMessages('talk', heardThere);
    onTestFinished(here.close);
    onTestFinished(there.close);
    here.tell(['job-1']);
    await eventually(() => expect(heardThere).toHaveBeenCalledWith(['job-1']));
    expect(heard).not.toHaveBeenCalled();
  });

  it('passes over what a tab of another build says', async () => {
    const heard = vi.fn();
    const here = openTabMessages('talk-2', heard);
    const other = new BroadcastChannel('talk-2');
    onTestFinished(here.close);
    onTestFinished(() => other.close());
    other.postMessage({ wrote: 'everything' });
    other.postMessage({ wrote: ['job-2'] });
    await eventually(() => expect(heard).toHaveBeenCalledWith(['job-2']));
    expect(heard).toHaveBeenCalledTimes(1);
  });

  it('does without where the browser has no channel', () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    const alone = openTabMessages('talk-3', () => undefined);
    expect(() => alone.tell(['job-1'])).not.toThrow();
    alone.close();
    vi.unstubAllGlobals();
  });
});
