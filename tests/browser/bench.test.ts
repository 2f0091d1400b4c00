import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { allLeaves, hasLeaf, sheetOf } from '../../src/engine/rig/leaves.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { launch } from './chromium.ts';
import { openSheet, seriousFaults, visit } from './visitor.ts';

let browser: Browser;
const address = inject('address');

beforeAll(async () => {
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
});

/** Leaves of a rig, each with its address and the title of its sheet. */
const leavesFor = (scheme: string) =>
  allLeaves
    .filter((leaf) => hasLeaf(leaf, scheme))
    .map((leaf) => {
      const of = stages.find(({ fields }) => fields.key === sheetOf(leaf));
      return [leaf, of?.fields.title ?? leaf] as const;
    });
const sheets = leavesFor('direct');

describe('in a real browser', () => {
  test('the first visit shows the forty-metre example, marked as invented, without a complaint', async () => {
    const { page, complaints, leave } = await visit(browser, address);
    expect(await page.getByLabel('Name of this rig').inputValue()).toBe('Forty-metre evening rig');
    expect(await page.getByText('invented example', { exact: true }).isVisible()).toBe(true);
    for (const [key, title] of sheets) {
      await openSheet(page, key, title);
      expect(await page.locator('main').textContent()).not.toMatch(/NaN|undefined|\[object/);
    }
    expect(complaints).toEqual([]);
    await leave();
  });

  test.each([0, 1, 2, 3])('example %i opens on every sheet', async (index) => {
    const { page, complaints, leave } = await visit(browser, address);
    await page.getByLabel('Open an example').selectOption(String(index));
    for (const [key, title] of index === 3 ? leavesFor('conversion') : sheets) {
      await openSheet(page, key, title);
      expect(await page.locator('main').textContent()).not.toMatch(/NaN|undefined|\[object/);
    }
    expect(complaints).toEqual([]);
    await leave();
  });

  test('asked for too much, the page says how much there is and what would help', async () => {
    const { page, leave } = await visit(browser, address);
    await page.getByLabel('Open an example').selectOption('2');
    await openSheet(page, 'filter', 'Filter');
    const text = await page.locator('main').textContent();
    expect(text).toMatch(/2\.2\d\skHz|22[67]\d\sHz/);
    await leave();
  });

  test('a change on one sheet moves the others, and the page shows what moved', async () => {
    const { page, complaints, leave } = await visit(browser, address);
    await openSheet(page, 'carrier', 'Carrier');
    const sentence = async () =>
      (await page.locator('.sentence').textContent())?.replace(/ \(was [^)]*\)/g, '');
    const before = await sentence();
    await openSheet(page, 'filter', 'Filter');
    await page.locator('[id="filter.bandwidth"]').fill('2,1k');
    const moved = page.getByRole('region', { name: /moved/i });
    await moved.waitFor();
    expect(await moved.textContent()).toMatch(/Bandwidth/);
    await openSheet(page, 'carrier', 'Carrier');
    expect(await sentence()).not.toBe(before);
    await page.getByRole('button', { name: /^Undo/ }).click();
    expect(await sentence()).toBe(before);
    expect(complaints).toEqual([]);
    await leave();
  });

  test('a wrong entry stays, with a message beside it, and mends without harm', async () => {
    const { page, complaints, leave } = await visit(browser, address);
    const field = page.locator('[id="plan.pep"]');
    await field.fill('two watts');
    expect(await field.inputValue()).toBe('two watts');
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('[id="plan.pep:problem"]').textContent()).toMatch(/two watts/);
    await openSheet(page, 'transmit', 'Transmit');
    expect(await page.locator('main').textContent()).toMatch(/Waits for Plan/);
    await openSheet(page, 'plan', 'Plan');
    await page.locator('[id="plan.pep"]').fill('33 dBm');
    expect(await page.locator('[id="plan.pep:echo"]').textContent()).toMatch(/1\.99|2\.00|2\sW/);
    expect(complaints).toEqual([]);
    await leave();
  });

  test('a sum such as 2*47p is understood', async () => {
    const { page, leave } = await visit(browser, address);
    await openSheet(page, 'quartz', 'Quartz');
    await page.locator('[id="quartz.c0Given"]').fill('2*2p');
    await page.locator('[id="quartz.c0Given:echo"]', { hasText: '4 pF' }).waitFor();
    await leave();
  });

  test('a reload keeps the rig and what was typed', async () => {
    const { page, complaints, leave } = await visit(browser, address);
    await page.locator('[id="plan.pep"]').fill('1W5');
    await page.waitForTimeout(500);
    await page.reload();
    await page.locator('h1').waitFor();
    expect(await page.locator('[id="plan.pep"]').inputValue()).toBe('1W5');
    expect(complaints).toEqual([]);
    await leave();
  });

  test('saved, emptied and opened again, the rig is the same; a broken file changes nothing', async () => {
    const { page, complaints, leave } = await visit(browser, address);
    await page.locator('[id="plan.supply"]').fill('13,8');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save' }).click(),
    ]);
    const text = readFileSync(await download.path(), 'utf8');
    expect(JSON.parse(text).entries['plan.supply'].text).toBe('13,8');
    await page.getByRole('button', { name: 'New rig' }).click();
    expect(await page.locator('[id="plan.supply"]').inputValue()).toBe('');
    const open = async (name: string, content: string) =>
      page
        .getByLabel('Open a rig file')
        .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(content) });
    await open('broken.json', text.slice(0, 50));
    await page.getByRole('alert').waitFor();
    expect(await page.locator('[id="plan.supply"]').inputValue()).toBe('');
    await open('rig.json', text);
    await page.getByText('is open').waitFor();
    expect(await page.locator('[id="plan.supply"]').inputValue()).toBe('13,8');
    expect(complaints).toEqual([]);
    await leave();
  });

  test('every figure opens to its workings', async () => {
    const { page, complaints, leave } = await visit(browser, address);
    await openSheet(page, 'filter', 'Filter');
    await page
      .getByRole('button', { name: /^how\s*: Loss$/ })
      .first()
      .click();
    const step = page.locator('.step');
    await step.waitFor();
    expect(await step.locator('math').count()).toBeGreaterThan(0);
    expect(await step.textContent()).toMatch(/Source/);
    expect(complaints).toEqual([]);
    await leave();
  });

  test('a symbol leads on to its own workings on another sheet, and down to what was typed', async () => {
    const { page, complaints, leave } = await visit(browser, address);
    await openSheet(page, 'carrier', 'Carrier');
    await page
      .getByRole('button', { name: /^how\s*: Carrier frequency$/ })
      .first()
      .click();
    await page.locator('.step').getByRole('link', { name: 'Motional capacitance' }).click();
    await page.getByRole('heading', { level: 1, name: 'Quartz' }).waitFor();
    const step = page.locator('.step');
    await step.waitFor();
    expect(await step.textContent()).toMatch(/resonates with Lm/);
    await step.getByRole('link', { name: 'Series resonance' }).click();
    await page.locator('.step', { hasText: 'As given' }).waitFor();
    await page.locator('.step').getByRole('link', { name: 'Series resonance' }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('quartz.fsGiven');
    expect(complaints).toEqual([]);
    await leave();
  });

  test('in the projector view the arrow keys step through the workings', async () => {
    const { page, complaints, leave } = await visit(browser, address);
    await openSheet(page, 'quartz', 'Quartz');
    await page.getByRole('button', { name: /projector/i }).click();
    const board = page.locator('.board');
    await board.locator('.step').waitFor();
    const size = await board
      .locator('.step__says')
      .evaluate((e) => Number.parseFloat(getComputedStyle(e).fontSize));
    expect(size).toBeGreaterThanOrEqual(24);
    const first = await board.textContent();
    for (let i = 0; i < 3; i += 1) await page.keyboard.press('ArrowRight');
    expect(await board.textContent()).not.toBe(first);
    for (let i = 0; i < 3; i += 1) await page.keyboard.press('ArrowLeft');
    expect(await board.textContent()).toBe(first);
    expect(complaints).toEqual([]);
    await leave();
  });

  test('an empty rig is one click away and says where to begin', async () => {
    const { page, complaints, leave } = await visit(browser, address);
    await page.getByRole('button', { name: 'New rig' }).click();
    expect(await page.locator('main').textContent()).toMatch(/crystal marking is given/);
    for (const [key, title] of sheets) {
      await openSheet(page, key, title);
      expect(await page.locator('main').textContent()).not.toMatch(/NaN|undefined|\[object/);
    }
    expect(complaints).toEqual([]);
    await leave();
  });

  test('nothing runs off a telephone 390 pixels wide', async () => {
    const { page, complaints, leave } = await visit(browser, address, {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    for (const [key, title] of sheets) {
      await openSheet(page, key, title);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over, `${title} runs off by ${over} px`).toBeLessThanOrEqual(0);
    }
    expect(complaints).toEqual([]);
    await leave();
  });

  // Dark is the same page in other colours: what depends on them is looked at again there.
  test.each([
    ['light', []],
    ['dark', ['color-contrast', 'link-in-text-block']],
  ] as const)('axe finds no serious fault in %s', async (colorScheme, rules) => {
    const { page, leave } = await visit(browser, address, { colorScheme });
    for (const [key, title] of sheets) {
      await openSheet(page, key, title);
      expect(await seriousFaults(page, rules), title).toEqual([]);
    }
    await leave();
  });

  test('dark is a palette of its own', async () => {
    const { page, leave } = await visit(browser, address, { colorScheme: 'dark' });
    const paper = await page
      .locator('.sheet')
      .evaluate((e) => getComputedStyle(e).backgroundColor.match(/\d+/g)?.map(Number) ?? []);
    expect(Math.max(...paper)).toBeLessThan(64);
    await leave();
  });

  test('on paper each sheet is clean: light, without controls, starting on its own page', async () => {
    const { page, leave } = await visit(browser, address, { colorScheme: 'dark' });
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    const paper = await page
      .locator('.sheet')
      .evaluate((e) => getComputedStyle(e).backgroundColor.match(/\d+/g)?.map(Number) ?? []);
    expect(Math.min(...paper.slice(0, 3))).toBeGreaterThan(240);
    expect(await page.getByRole('button', { name: 'New rig' }).isVisible()).toBe(false);
    await leave();
  });
});
