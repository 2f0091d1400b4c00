import { launch } from '../browser/chromium.ts';
import { serve } from '../browser/served.ts';
import { openSheet, visit } from '../browser/visitor.ts';

/**
 * Key press to painted new figures, in a real browser, with the charts of the sheet showing.
 * Prints median and 95th percentile in milliseconds. Aim: 50 ms at the 95th percentile.
 */
async function main(): Promise<void> {
  const [browser, served] = await Promise.all([launch(), serve()]);
  for (const [sheet, title, field] of [
    ['filter', 'Filter', 'filter.bandwidth'],
    ['carrier', 'Carrier', 'carrier.attenuationGiven'],
    ['output', 'Output', 'output.cutoffRatio'],
    ['transmit', 'Transmit', 'transmit.microphone'],
  ] as const) {
    const { page, leave } = await visit(browser, served.address);
    await openSheet(page, sheet, title);
    const input = page.locator(`[id="${field}"]`);
    await input.focus();
    if ((await input.inputValue()) === '') await page.keyboard.press('ArrowUp');
    await page.waitForTimeout(800);
    await page.evaluate(() => {
      const times: number[] = [];
      Object.assign(window, { keyToPaint: times });
      window.addEventListener(
        'keydown',
        (event) => {
          const from = event.timeStamp;
          // The frame after the next holds what this key changed; its start is when it was painted.
          requestAnimationFrame(() =>
            requestAnimationFrame(() => times.push(performance.now() - from)),
          );
        },
        true,
      );
    });
    for (let i = 0; i < 60; i += 1) {
      await page.keyboard.press(i % 2 ? 'ArrowDown' : 'ArrowUp');
      await page.waitForTimeout(120);
    }
    const times = await page.evaluate(
      () => (window as unknown as { keyToPaint: number[] }).keyToPaint,
    );
    const sorted = times.slice(5).sort((a, b) => a - b);
    const at = (q: number) => (sorted[Math.floor(q * (sorted.length - 1))] ?? 0).toFixed(1);
    process.stdout.write(`${title}: median ${at(0.5)} ms, 95 % ${at(0.95)} ms\n`);
    await leave();
  }
  await browser.close();
  await served.stop();
}

await main();
