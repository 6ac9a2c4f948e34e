// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, it } from 'vitest';
import { JobSheet } from '@/app/_docket/jobSheet/JobSheet';
import { priceJob } from '@/lib/costing/priceJob';
import type { JobInput } from '@/shared/schemas/request';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

afterEach(cleanup);

const noFile = async () => null;

const show = (input: JobInput) =>
  render(
    <JobSheet input={input} answer={priceJob(input, grid)} readFile={noFile} context={input.workshop} />,
  );

it('a job has a page for the bench without money, and one of costs that is the owner’s', () => {
  show(club());
  const bench = screen.getByRole('article', { name: 'Job sheet' });
  expect(bench).toHaveTextContent('Print 53 sheets');
  expect(bench).toHaveTextContent('Letter sheet; 2 h 27 min, unattended');
  expect(bench).toHaveTextContent('mirrored on paper');
  expect(bench).toHaveTextContent('45 in all, 8 spares; 79 % sure that no size runs out');
  expect(bench).not.toHaveTextContent(/USD|margin|profit/i);
  // The worked example's own figures.
  expect(screen.getByRole('article', { name: 'For you alone' })).toHaveTextContent(
    /411\.79.*288\.37.*40\.5 %/,
  );
});

it('a stop that was passed stands on the page with its reason', () => {
  const answer = priceJob(club(), grid);
  const [first] = answer.findings;
  if (first === undefined) throw new Error('the example has findings');
  const passed = { ...first, severity: 'stop' as const, waivedBecause: 'the customer saw a sample' };
  const input = club();
  render(
    <JobSheet
      input={input}
      answer={{ ...answer, findings: [passed] }}
      readFile={noFile}
      context={input.workshop}
    />,
  );
  expect(screen.getByRole('article', { name: 'Job sheet' })).toHaveTextContent(
    /Passed by you: .*Reason: “the customer saw a sample”/,
  );
});

it('a stopped job has no plan to press by, and says what stops it', () => {
  show(clubWith({ 'job.printerId': 'gone' }));
  const sheet = screen.getByRole('article', { name: 'Job sheet' });
  expect(sheet).toHaveTextContent('There is no job sheet while a stop stands');
  expect(sheet).toHaveTextContent('The job names a printer that was removed');
  expect(screen.queryByRole('article', { name: 'For you alone' })).not.toBeInTheDocument();
});
