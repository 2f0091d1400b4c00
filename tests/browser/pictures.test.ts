import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
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

describe('taking things away', () => {
  test('a chart of a dark page is saved on white paper, whole in itself', async () => {
    const { page, complaints, leave } = await visit(browser, address, {
      colorScheme: 'dark',
    });
    await openSheet(page, 'filter', 'Filter');
    const chart = page.locator('figure.chart').first();
    await chart.getByText('Save this picture').click();
    const saved = async (name: string, from = page.getByRole('button', { name })) => {
      const [download] = await Promise.all([page.waitForEvent('download'), from.first().click()]);
      return { file: readFileSync(await download.path()), name: download.suggestedFilename() };
    };
    const drawing = await saved('SVG', chart.getByRole('button', { name: 'SVG' }));
    expect(drawing.name).toBe('Response-of-the-filter.svg');
    const svg = drawing.file.toString('utf8');
    expect(svg).toMatch(/<rect[^>]*fill="#fbfcfd"/);
    expect(svg).toContain('Source Sans');
    expect(svg).not.toMatch(/class=|var\(|https?:\/\/(?!www\.w3\.org)|NaN/);
    // It is read as it stands, by itself.
    expect(
      await page.evaluate((text) => {
        const read = new DOMParser().parseFromString(text, 'image/svg+xml');
        return read.querySelector('parsererror')?.textContent ?? read.documentElement.localName;
      }, svg),
    ).toBe('svg');
    const points = await saved('PNG', chart.getByRole('button', { name: 'PNG' }));
    // Signature and width of a PNG file (ISO/IEC 15948): twice that of the drawing.
    expect(points.file.subarray(1, 4).toString('latin1')).toBe('PNG');
    expect(points.file.readUInt32BE(16)).toBe(2 * Number(/width="(\d+)"/.exec(svg)?.[1]));
    expect(points.file.length).toBeGreaterThan(20_000);

    const netlist = await saved('SPICE netlist');
    expect(netlist.name).toBe('Forty-metre-evening-rig-filter.cir');
    expect(netlist.file.toString('utf8')).toMatch(
      /^\* Forty-metre evening rig\n[\s\S]*\.ac lin 401/,
    );
    const touchstone = await saved('Touchstone at 50 Ω');
    expect(touchstone.name).toBe('Forty-metre-evening-rig-50-ohm.s2p');
    expect((await saved('Response as CSV')).file.toString('utf8')).toMatch(/^Frequency \(Hz\),/);
    expect(complaints).toEqual([]);
    await leave();
  });
});
