import { describe, expect, it } from 'vitest';
import { memoryBackend } from '@/app/_backend/memoryBackend';
import { absorb, readBackend } from '@/app/_store/readBackend';
import { emptyTabState } from '@/app/_store/tabState';
import { aStoredJob, smallKinds } from '@/tests/lib/stored/smallRegistry';

describe('absorb', () => {
  const tabState = { ...emptyTabState, documents: new Map([['job-1', aStoredJob({ revision: 4 })]]) };

  it('takes a newer document', () => {
    const newer = aStoredJob({ revision: 5 });
    expect(absorb(tabState, { documents: [newer] }).documents.get('job-1')).toBe(newer);
  });

  it('keeps what is held when a slow reading is older', () => {
    const { documents } = absorb(tabState, { documents: [aStoredJob({ revision: 3 })] });
    expect(documents.get('job-1')?.revision).toBe(4);
  });

  it('takes a mended record out of the unreadable ones', () => {
    const broken = { state: 'unreadable', id: 'job-1', kind: 'job', raw: 1, findings: [] } as const;
    const taken = absorb(
      { ...emptyTabState, unreadable: new Map([['job-1', broken]]) },
      { documents: [aStoredJob()] },
    );
    expect(taken.unreadable.size).toBe(0);
  });
});

describe('memoryBackend', () => {
  it('does all of the work or none of it', async () => {
    const backend = memoryBackend();
    const failing = backend.transact('write', async (tx) => {
      await tx.put('documents', [aStoredJob()]);
      throw new Error('pulled the plug');
    });
    await expect(failing).rejects.toThrow('pulled the plug');
    const reading = await backend.transact('read', (tx) => readBackend(tx, smallKinds, null, emptyTabState));
    expect(reading.documents).toEqual([]);
  });

  it('does one work after the other', async () => {
    const backend = memoryBackend();
    const raise = () =>
      backend.transact('write', async (tx) => {
        const [row] = await tx.get('meta', ['count']);
        const count = typeof row === 'object' && row !== null && 'count' in row ? Number(row.count) : 0;
        await tx.put('meta', [{ key: 'count', count: count + 1 }]);
      });
    await Promise.all([raise(), raise(), raise()]);
    const rows = await backend.transact('read', async (tx) => tx.get('meta', ['count']));
    expect(rows).toEqual([{ key: 'count', count: 3 }]);
  });
});
