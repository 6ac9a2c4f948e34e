import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { readPages } from '@/tests/fixtures/readPages';
import { section } from './docketPage';
import type { Hands } from './hands';

/** How an order stands, as its own screen and the board say it. */
export interface Station {
  /** The stretch of the track it is on; null once it is over. */
  readonly stage: string | null;
  /** What the answer of “What it waits for” begins with. */
  readonly waits: string;
  /** Total, what came, what is owed, as they stand there; a dash where nobody has agreed. */
  readonly money: readonly [total: string, came: string, owed: string];
  /** What the last line of what happened begins with. */
  readonly last: string;
  /** Whose turn the board says it is, and what of the money. */
  readonly turn: 'You' | 'Customers' | 'Nobody' | null;
  readonly boardMoney: string;
}

/** All that the screen of an order says of how it stands. */
export async function expectRoom(page: Page, { stage, waits, money, last }: Station): Promise<void> {
  const track = page.getByRole('list', { name: 'How far it is' });
  await track.waitFor();
  const said = async () => ({
    stage: await track.locator('[aria-current="step"]').allTextContents(),
    waits: await answerOf(page, 'What it waits for'),
    money: await figuresOf(page),
    last: await foldedAnswerOf(page, 'What happened'),
  });
  await expect.poll(said).toEqual({
    stage: stage === null ? [] : [expect.stringContaining(stage)],
    waits: expect.stringMatching(beginning(waits)),
    money,
    last: expect.stringMatching(beginning(last)),
  });
}

/** The same from the board, and back to the order by its link there. */
export async function expectOnBoard(
  page: Page,
  hands: Hands,
  name: string,
  { turn, boardMoney }: Station,
): Promise<void> {
  await hands.press(page.getByRole('link', { name: 'Orders', exact: true }).first());
  const all = page.getByRole('region', { name: 'All orders' });
  await all.waitFor();
  const group = turn === null ? all : all.getByRole('region', { name: new RegExp(`^${turn} `) });
  const link = page.getByRole('link', { name, exact: true });
  const row = group.getByRole('listitem').filter({ has: link });
  if (turn === null) await expect.poll(() => row.count()).toBe(0);
  else {
    await expect.poll(() => row.textContent()).toContain(boardMoney);
    // A button of one word is not broken.
    expect(await row.getByRole('button').evaluate(linesOf)).toBe(1);
    await hands.press(row.getByRole('link', { name, exact: true }));
    await page.getByRole('heading', { level: 1, name }).waitFor();
  }
}

/** Notes what happened: the button of its row, then the form that opens. */
export async function note(
  page: Page,
  hands: Hands,
  button: RegExp,
  fill: (form: Locator) => Promise<void> = async () => undefined,
): Promise<void> {
  const waits = section(page, 'What it waits for');
  await hands.press(waits.getByRole('button', { name: button }));
  const form = waits.getByRole('form');
  await form.waitFor();
  await fill(form);
  await hands.press(form.getByRole('button', { name: /^Note it/ }));
  await form.waitFor({ state: 'detached' });
}

/**
 * Issues a paper of the order.
 *
 * @param kind as the list of what went out names it
 * @returns what its file says, read back
 */
export async function issue(page: Page, hands: Hands, tab: string, kind: string): Promise<string> {
  await hands.turnTo(page.getByRole('tab', { name: tab, exact: true }));
  const panel = page.getByRole('tabpanel', { name: tab });
  const out = panel.getByRole('region', { name: `What went out: ${kind}` });
  await expect.poll(() => panel.locator('[aria-busy="true"]').count()).toBe(0);
  const before = await out.getByRole('listitem').count();
  await hands.press(panel.getByRole('button', { name: /^Issue / }));
  await expect.poll(() => out.getByRole('listitem').count()).toBe(before + 1);
  await panel.getByText('It is kept with its file.').waitFor();
  const save = out.getByRole('button', { name: /^Save / }).first();
  const [download] = await Promise.all([page.waitForEvent('download'), hands.press(save)]);
  expect(download.suggestedFilename()).toMatch(/\.pdf$/);
  return (await readPages(new Uint8Array(await readFile(await download.path())))).text;
}

// Helpers

const beginning = (text: string): RegExp =>
  new RegExp(`^${text.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)}`);

/** The answer line of a section, its words parted by one space. */
async function answerOf(page: Page, name: string): Promise<string> {
  const line = section(page, name).getByRole('paragraph').first();
  return ((await line.textContent()) ?? '').replaceAll(/\s+/g, ' ').trim();
}

/** The same of a part that is folded away: it stands on the line that opens it, behind its name. */
async function foldedAnswerOf(page: Page, name: string): Promise<string> {
  const line = section(page, name).getByRole('button').first();
  const text = ((await line.textContent()) ?? '').replaceAll(/\s+/g, ' ').trim();
  return text.slice(name.length).trim();
}

async function figuresOf(page: Page): Promise<readonly string[]> {
  const figures = await section(page, 'Money')
    .locator('dl')
    .first()
    .evaluate((list) =>
      [...list.querySelectorAll('dt')].map(
        (term) => [term.textContent ?? '', term.nextElementSibling?.textContent ?? ''] as const,
      ),
    );
  const of = (label: string) =>
    figures.find(([name]) => name.startsWith(label))?.[1].replace('not agreed yet', '') ?? 'not there';
  return [of('total'), of('came in'), of('owed')];
}

/** @returns on how many lines the words of an element stand. */
function linesOf(element: Element): number {
  const words = document.createRange();
  words.selectNodeContents(element);
  return new Set(Array.from(words.getClientRects(), ({ top }) => Math.round(top))).size;
}
