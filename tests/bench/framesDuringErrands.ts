import { launch } from '../browser/chromium.ts';
import { serve } from '../browser/served.ts';
import { openSheet, visit } from '../browser/visitor.ts';

// Text, for it runs in the page.
const watch = `{
  const seen = { longest: 0, last: performance.now() };
  window.frames_ = seen;
  const frame = (now) => {
    seen.longest = Math.max(seen.longest, now - seen.last);
    seen.last = now;
    requestAnimationFrame(frame);
  };
  requestAnimationFrame((now) => { seen.last = now; frame(now); });
}`;

/**
 * How long errands take in a real browser, from the last key to the answer on the page, and the
 * longest gap between two frames meanwhile. Aims: 1 s for ten thousand builds, no frame over 50 ms.
 */
async function main(): Promise<void> {
  const [browser, served] = await Promise.all([launch(), serve()]);
  const { page, leave } = await visit(browser, served.address);
  const fresh = '.errand[data-standing="fresh"]';
  const shown = (what: string) => page.locator(what).first().waitFor({ timeout: 60_000 });
  const timed = async (what: string, act: () => Promise<unknown>, answer = fresh) => {
    await page.waitForTimeout(1500);
    await page.evaluate(watch);
    await page.waitForTimeout(300);
    const idle = await longest();
    const from = Date.now();
    await act();
    await page.locator('.errand[data-standing="running"]').first().waitFor();
    const sent = Date.now();
    await shown(answer);
    const answered = Date.now();
    await page.waitForTimeout(500);
    process.stdout.write(
      `${what}: ${answered - sent} ms from sent to shown (${answered - from} ms from the key), longest frame ${(await longest()).toFixed(0)} ms (${idle.toFixed(0)} ms at rest)\n`,
    );
  };
  const longest = () =>
    page.evaluate(() => (window as unknown as { frames_: { longest: number } }).frames_.longest);

  await page.getByLabel('Open an example').selectOption('1');
  await openSheet(page, 'yield', 'Filter');
  await shown(fresh);
  for (const text of ['4 %', '3 %', '5 %']) {
    await timed('10 000 builds of eight crystals', () =>
      page.locator('[id="yield.tolerance"]').last().fill(text),
    );
  }
  await openSheet(page, 'bag', 'Quartz');
  await timed(
    'choosing from the bag',
    () =>
      page
        .getByRole('button', { name: /choose/i })
        .first()
        .click(),
    'button:has-text("Take this")',
  );
  await leave();
  await browser.close();
  await served.stop();
}

await main();
