// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import type { Family } from '@/app/_controls/FamilyMark';
import { FamilyMark } from '@/app/_controls/FamilyMark';
import { FindingRow } from '@/app/_controls/FindingRow';
import { HeatFigure } from '@/app/_controls/HeatFigure';
import type { Severity } from '@/app/_controls/SeverityShape';

afterEach(cleanup);

describe('FindingRow', () => {
  it.each([
    ['stop', 'Stop'],
    ['caution', 'Caution'],
    ['note', 'Note'],
  ] as const)('says in a word and by its outline that it is a %s', (severity, word) => {
    const { container } = render(<FindingRow severity={severity} sentence="The sheet is too small." />);
    expect(screen.getByText(word)).toBeVisible();
    expect(container.querySelector('svg path')).toBeInTheDocument();
  });

  it('has three outlines that differ', () => {
    const outline = (severity: Severity) =>
      render(<FindingRow severity={severity} sentence="x" />)
        .container.querySelector('path')
        ?.getAttribute('d');
    expect(new Set([outline('stop'), outline('caution'), outline('note')]).size).toBe(3);
  });

  it('mends what it found with one button, and has room for a reason to go on', async () => {
    const onFix = vi.fn();
    render(
      <ul>
        <FindingRow
          severity="stop"
          sentence="Too wide."
          detail="Make it smaller"
          fix={{ label: 'Make it 8 in', onFix }}
        >
          <label>
            Because <input />
          </label>
        </FindingRow>
      </ul>,
    );
    const row = screen.getByRole('listitem');
    await userEvent.click(within(row).getByRole('button', { name: 'Make it 8 in' }));
    expect(onFix).toHaveBeenCalledTimes(1);
    expect(within(row).getByRole('textbox', { name: 'Because' })).toBeVisible();
  });
});

describe('HeatFigure', () => {
  it('glows when it changes, and not when it is first shown', () => {
    const { rerender } = render(<HeatFigure text="19.00" />);
    const first = screen.getByText('19.00').className;
    rerender(<HeatFigure text="19.50" />);
    const second = screen.getByText('19.50').className;
    rerender(<HeatFigure text="20.00" />);
    const third = screen.getByText('20.00').className;
    expect(first).not.toMatch(/glow/i);
    expect(second).toMatch(/glow/i);
    expect(third).toMatch(/glow/i);
    expect(third).not.toBe(second);
  });
});

describe('FamilyMark', () => {
  it('has a pattern of its own for each family, so that colour is never needed', () => {
    const families: readonly Family[] = ['materials', 'time', 'running', 'loss', 'house'];
    const patterns = families.map((family) =>
      render(<FamilyMark family={family} />)
        .container.querySelector('path')
        ?.getAttribute('d'),
    );
    expect(new Set(patterns).size).toBe(families.length);
  });
});

describe('CardSection', () => {
  it('is a region named by its heading, the numeral being for the eye', () => {
    render(
      <Card>
        <CardSection numeral={2} heading="Checks" answer="before any sum is made" id="checks">
          all clear
        </CardSection>
      </Card>,
    );
    expect(screen.getByRole('region', { name: 'Checks' })).toHaveTextContent('before any sum is made');
    expect(screen.getByRole('heading', { level: 2 })).toHaveTextContent(/^Checks$/);
  });
});
