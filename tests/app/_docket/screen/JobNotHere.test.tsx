// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { JobNotHere } from '@/app/_docket/screen/JobNotHere';
import type { Workspace } from '@/app/_documents/useWorkspace';
import type { UnreadableRecord } from '@/lib/stored/openRecord';

const saved = vi.hoisted(() => vi.fn());
vi.mock('@/app/_files/saveFile', () => ({ saveFile: saved }));

afterEach(cleanup);

const record: UnreadableRecord = {
  state: 'unreadable',
  id: 'torn-job',
  kind: 'job',
  raw: { id: 'torn-job', kind: 'job', body: 'half a record' },
  findings: [{ code: 'newerVersion', version: 7, known: 1 }],
};

/** Nothing but what this screen reads of the maker's documents. */
const workspaceWith = (unreadable: readonly UnreadableRecord[]) => ({ unreadable }) as unknown as Workspace;

describe('JobNotHere', () => {
  it('shows a record that cannot be read with its reason, and saves it as it was found', async () => {
    render(<JobNotHere jobId="torn-job" workspace={workspaceWith([record])} />);
    expect(screen.getByRole('heading', { level: 1, name: 'This job cannot be read' })).toBeVisible();
    // What is said of the record is fetched behind the page.
    expect(await screen.findByText(/^A job cannot be read\. It stays kept/)).toBeVisible();
    fireEvent.click(screen.getByText('Save it as a file'));
    expect(saved).toHaveBeenCalledWith('pressminute-record-torn-job.json', record.raw);
  });

  it('says nothing of records that are others', () => {
    render(<JobNotHere jobId="nobody" workspace={workspaceWith([record])} />);
    expect(screen.getByRole('heading', { level: 1, name: 'This job is not here' })).toBeVisible();
    expect(screen.queryByText(/torn-job/)).toBeNull();
  });
});
