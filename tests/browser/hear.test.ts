import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { launch } from './chromium.ts';
import { openSheet, visit } from './visitor.ts';

let browser: Browser;
const address = inject('address');

beforeAll(async () => {
  // The browser's own make-believe microphone: it beeps.
  browser = await launch(
    '--use-fake-device-for-media-stream',
    '--use-fake-ui-for-media-stream',
    '--autoplay-policy=no-user-gesture-required',
  );
});
afterAll(async () => {
  await browser?.close();
});

const made = (page: Page) =>
  page.locator('.errand[data-standing="fresh"]').waitFor({ timeout: 30_000 });

/** A WAV file of two seconds, 8 kHz, 16 bits: a tone of 1 kHz. */
function wave(): Buffer {
  const count = 16_000;
  const file = Buffer.alloc(44 + 2 * count);
  file.write('RIFF', 0);
  file.writeUInt32LE(36 + 2 * count, 4);
  file.write('WAVEfmt ', 8);
  file.writeUInt32LE(16, 16);
  file.writeUInt16LE(1, 20);
  file.writeUInt16LE(1, 22);
  file.writeUInt32LE(8000, 24);
  file.writeUInt32LE(16_000, 28);
  file.writeUInt16LE(2, 32);
  file.writeUInt16LE(16, 34);
  file.write('data', 36);
  file.writeUInt32LE(2 * count, 40);
  for (let i = 0; i < count; i += 1) {
    file.writeInt16LE(Math.round(10_000 * Math.sin((2 * Math.PI * i) / 8)), 44 + 2 * i);
  }
  return file;
}

describe('listening', () => {
  test('it plays, goes on while the filter is changed, and stops', async () => {
    const { page, complaints, leave } = await visit(browser, address, {
      viewport: { width: 1280, height: 900 },
    });
    await openSheet(page, 'hear', 'Path');
    await made(page);
    const at = async () => Number(await page.locator('.sound__now').getAttribute('x1'));
    await page.getByRole('button', { name: 'Listen' }).click();
    await page.waitForFunction(() => {
      const line = document.querySelector<SVGLineElement>('.sound__now');
      return line?.style.visibility === 'visible' && Number(line.getAttribute('x1')) > 0;
    });
    const first = await at();
    await page.getByRole('radio', { name: 'As spoken' }).check();
    await page.waitForTimeout(400);
    expect(await at()).toBeGreaterThan(first);
    await page.locator('[id="hear.offTune"]').fill('100');
    await made(page);
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.waitForFunction(
      () => document.querySelector<SVGLineElement>('.sound__now')?.style.visibility === 'hidden',
    );
    expect(complaints).toEqual([]);
    await leave();
  });

  test('a sound file and the microphone are heard instead, and nothing is kept or sent', async () => {
    const { page, complaints, leave } = await visit(browser, address, {
      viewport: { width: 390, height: 844 },
      permissions: ['microphone'],
    });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await openSheet(page, 'hear', 'Path');
    await made(page);
    await page.locator('input[type="file"][accept="audio/*"]').setInputFiles({
      name: 'tone.wav',
      mimeType: 'audio/wav',
      buffer: wave(),
    });
    await page.getByText('What is heard: tone.wav').waitFor();
    await made(page);
    await page.getByRole('button', { name: /Speak for/ }).click();
    await page.waitForTimeout(1500);
    await page.getByRole('button', { name: 'That is enough' }).click();
    await page.getByText('What is heard: your own voice').waitFor();
    await made(page);
    const kept = await page.evaluate(() => JSON.stringify({ ...localStorage }));
    expect(kept).not.toMatch(/tone\.wav|your own voice/);
    expect(asked.filter((url) => !url.startsWith(address) && !/^(data|blob):/.test(url))).toEqual(
      [],
    );
    expect(complaints).toEqual([]);
    await leave();
  });
});
