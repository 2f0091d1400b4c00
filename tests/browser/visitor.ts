import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';

const axeSource = readFileSync(
  createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
  'utf8',
);

/** A page of its own, with everything the browser complained about written down. */
export interface Visitor {
  readonly page: Page;
  readonly complaints: string[];
  readonly leave: () => Promise<void>;
}

/** Opens the bench as somebody who has never been here. */
export async function visit(
  browser: Browser,
  address: string,
  options: BrowserContextOptions = {},
): Promise<Visitor> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(address);
  await page.locator('h1').waitFor();
  return { page, complaints, leave: () => context.close() };
}

/** Opens a sheet, or a leaf of one, by its address. */
export async function openSheet(page: Page, key: string, title: string): Promise<void> {
  await page.evaluate((hash) => {
    window.location.hash = hash;
  }, key);
  await page.getByRole('heading', { level: 1, name: title }).waitFor();
  await page.waitForFunction((address) => {
    const leaf = document.querySelector('.leaves [aria-current]');
    return leaf === null || leaf.getAttribute('href') === address;
  }, `#${key}`);
}

interface Axe {
  readonly run: (how: {
    readonly resultTypes: readonly string[];
    readonly runOnly?: readonly string[];
  }) => Promise<{ violations: Fault[] }>;
}

interface Fault {
  readonly id: string;
  readonly impact: string | null;
  readonly nodes: readonly { readonly html: string }[];
}

/**
 * Serious and critical faults that axe finds on the page as it stands.
 *
 * @param rules the rules to look at, by axe's names; all of them if none is named
 */
export async function seriousFaults(page: Page, rules: readonly string[] = []): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeSource);
  const faults = await page.evaluate(
    async (only) => {
      const { axe } = window as unknown as { axe: Axe };
      return (await axe.run({ resultTypes: ['violations'], ...only })).violations;
    },
    rules.length > 0 ? { runOnly: [...rules] } : {},
  );
  return faults
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) =>
      nodes.slice(0, 3).map(({ html }) => `${id}: ${html.slice(0, 140)}`),
    );
}
