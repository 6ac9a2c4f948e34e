// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, it } from 'vitest';
import { FigureButton } from '@/app/_trace/FigureButton';
import { useOpenFigure } from '@/app/_trace/useOpenFigure';

afterEach(cleanup);

function Shown() {
  const opens = useOpenFigure();
  return <FigureButton figure={{ rowId: 'inkMl' }} name="Ink, whole job" text="35.1 mL" opens={opens} />;
}

it('a figure that opens says what it is in its name, and holds no words but its own', () => {
  render(<Shown />);
  expect(screen.getByRole('button', { name: 'Ink, whole job: 35.1 mL' })).toHaveTextContent(/^35\.1 mL$/);
});
