import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { exampleSweeps } from '../../src/engine/rig/exampleSweeps.ts';
import { launch } from './chromium.ts';
import { openSheet, visit } from './visitor.ts';

let browser: Browser;
const address = inject('address');

beforeAll(async () => {
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
});

const widths = [
  ['desk', { viewport: { width: 1280, height: 900 } }],
  ['telephone', { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }],
] as const;

describe.each(widths)('from a bag of crystals to a filter, at a %s', (_, options) => {
  test('a sweep file is read, fitted, and its figures are handed on to Quartz', async () => {
    const { page, complaints, leave } = await visit(browser, address, options);
    await page.getByRole('button', { name: 'New rig' }).first().click();
    await page.locator('[id="plan.marking"]').fill('7.2M');
    await openSheet(page, 'sweep', 'Quartz');
    await page
      .locator('.pasted input[type=file]')
      .first()
      .setInputFiles({
        name: 'crystal.s2p',
        mimeType: 'text/plain',
        buffer: Buffer.from(exampleSweeps.forty),
      });
    await page.locator('.figure--main', { hasText: /\d\sfF/ }).waitFor();
    await openSheet(page, 'measure', 'Quartz');
    await page.locator('input[name="measure.method"][value="sweep"]').check();
    await openSheet(page, 'quartz', 'Quartz');
    const lead = await page.locator('.sentence').textContent();
    expect(lead).toMatch(/(29|30)\.\d+\smH/);
    expect(complaints).toEqual([]);
    await leave();
  });

  test('crystals are chosen from the bag in a worker, taken, and the filter is made of them', async () => {
    const { page, complaints, leave } = await visit(browser, address, options);
    await openSheet(page, 'bag', 'Quartz');
    await page
      .getByRole('button', { name: /choose/i })
      .first()
      .click();
    const take = page.getByRole('button', { name: /take this/i });
    await take.waitFor({ timeout: 60_000 });
    await take.click();
    await openSheet(page, 'filter', 'Filter');
    const chosen = await page.locator('[id="filter.chosen"]').inputValue();
    expect(chosen.trim().split(/[\s,]+/)).toHaveLength(6);
    expect(complaints).toEqual([]);
    await leave();
  });

  test('ten thousand builds come back from the workers, and can be stopped', async () => {
    const { page, complaints, leave } = await visit(browser, address, options);
    await openSheet(page, 'yield', 'Filter');
    await page.locator('[id="yield.widthLeast"]').fill('2300');
    await page.locator('.errand[data-standing="fresh"]').waitFor({ timeout: 60_000 });
    expect(await page.locator('.figure--main').first().textContent()).toMatch(/\d+(\.\d+)?\s%/);
    await page.locator('.sentence input').first().fill('100000');
    await page.getByRole('button', { name: 'Stop' }).click({ timeout: 20_000 });
    await page.locator('.errand[data-standing="before"]').waitFor();
    expect(complaints).toEqual([]);
    await leave();
  });
});

describe('taken away', () => {
  test('netlist, Touchstone file and response are saved, and hold what they should', async () => {
    const { page, complaints, leave } = await visit(browser, address);
    await openSheet(page, 'filter', 'Filter');
    const save = async (name: string | RegExp) => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name }).click(),
      ]);
      return {
        name: download.suggestedFilename(),
        text: readFileSync(await download.path(), 'utf8'),
      };
    };
    const net = await save('SPICE netlist');
    expect(net.name).toMatch(/\.cir$/);
    expect(net.text).toMatch(/\.ac lin/i);
    const two = await save('Touchstone at 50 Ω');
    expect(two.name).toMatch(/\.s2p$/);
    expect(two.text).toMatch(/^# HZ S (RI|MA|DB) R 50/im);
    const columns = await save('Response as CSV');
    expect(columns.text.split('\n').length).toBeGreaterThan(100);
    expect(complaints).toEqual([]);
    await leave();
  });

  test('a chart is saved as a drawing and as points', async () => {
    const { page, complaints, leave } = await visit(browser, address);
    await openSheet(page, 'filter', 'Filter');
    const fold = page.locator('summary', { hasText: 'Save this picture' }).first();
    await fold.click();
    const buttons = fold.locator('..').getByRole('button');
    const saved: Buffer[] = [];
    for (let i = 0; i < 2; i += 1) {
      const [download] = await Promise.all([page.waitForEvent('download'), buttons.nth(i).click()]);
      saved.push(readFileSync(await download.path()));
    }
    expect(saved[0]?.toString('utf8')).toMatch(/<svg[\s\S]*<path/);
    expect(saved[1]?.subarray(1, 4).toString()).toBe('PNG');
    expect(complaints).toEqual([]);
    await leave();
  });
});
