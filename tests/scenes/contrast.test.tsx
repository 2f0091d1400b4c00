import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/*
 * Contrast of the tokens by the formula of WCAG 2.2 (W3C Recommendation, 2023): "relative
 * luminance" and "contrast ratio", success criteria 1.4.3 (text 4.5:1) and 1.4.11 (graphics 3:1).
 */
const css = readFileSync('src/design/tokens.css', 'utf8');

/** Colours of the given rule, later rules over earlier ones. */
function palette(...selectors: string[]): Record<string, string> {
  const found: Record<string, string> = {};
  for (const selector of selectors) {
    const start = css.indexOf(`${selector} {\n`);
    const rule = start < 0 ? '' : css.slice(start, css.indexOf('}', start));
    for (const [, name = '', colour = ''] of rule.matchAll(/--([a-z-]+): (#[0-9a-f]+);/g)) {
      found[name] = colour;
    }
  }
  return found;
}

function luminance(hex: string): number {
  const long = hex.length === 4 ? hex.replace(/[0-9a-f]/g, '$&$&') : hex;
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((i) => {
    const c = Number.parseInt(long.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((p, q) => q - p);
  return (high + 0.05) / (low + 0.05);
}

describe.each([
  ['light', palette(':root')],
  ['dark', palette(':root', ':root[data-scheme="dark"]')],
  ['projector', palette(':root', ':root[data-view="projector"]')],
  [
    'dark projector',
    palette(
      ':root',
      ':root[data-scheme="dark"]',
      ':root[data-view="projector"][data-scheme="dark"]',
    ),
  ],
] as const)('%s palette', (_, tokens) => {
  const ratio = (a: string, b: string) => contrast(tokens[a] ?? '#888', tokens[b] ?? '#888');

  it.each(['ink', 'ink-soft', 'ink-faint', 'copper'])('%s is readable on both grounds', (ink) => {
    for (const ground of ['paper', 'bench']) {
      expect(ratio(ink, ground), `${ink} on ${ground}`).toBeGreaterThanOrEqual(4.5);
    }
  });

  it('ink is readable on a tinted band and on the copper wash', () => {
    expect(ratio('ink', 'tint')).toBeGreaterThanOrEqual(4.5);
    expect(ratio('copper', 'copper-wash')).toBeGreaterThanOrEqual(4.5);
  });

  it.each(['rule', 'copper-bright'])('%s is seen as an edge', (line) => {
    expect(ratio(line, 'paper')).toBeGreaterThanOrEqual(3);
    expect(ratio(line, 'bench')).toBeGreaterThanOrEqual(3);
  });
});

describe('dark by the system and dark by choice', () => {
  it('are one palette', () => {
    const bySystem = palette(':root:not([data-scheme="light"])');
    expect(Object.keys(bySystem).length).toBeGreaterThan(8);
    expect(bySystem).toEqual(palette(':root[data-scheme="dark"]'));
    expect(palette(':root[data-view="projector"]:not([data-scheme="light"])')).toEqual(
      palette(':root[data-view="projector"][data-scheme="dark"]'),
    );
  });
});
