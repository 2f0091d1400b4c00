import { svgText } from './chartImage.ts';

/** Points of the picture for one of the drawing. */
const SCALE = 2;

/**
 * A chart's picture in points, at twice its size. The page's font is put into it: a picture drawn
 * by itself sees no font of the page.
 */
export async function pngOf(image: SVGSVGElement): Promise<Blob> {
  const font = await embeddedFont();
  if (font !== null) {
    const style = document.createElementNS('http://www.w3.org/2000/svg', 'style');
    style.textContent = font;
    image.prepend(style);
  }
  const width = Number(image.getAttribute('width'));
  const height = Number(image.getAttribute('height'));
  const address = URL.createObjectURL(new Blob([svgText(image)], { type: 'image/svg+xml' }));
  try {
    const picture = new Image();
    picture.src = address;
    await picture.decode();
    const canvas = document.createElement('canvas');
    canvas.width = SCALE * width;
    canvas.height = SCALE * height;
    canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) =>
      canvas.toBlob(
        (blob) => (blob ? resolve(blob) : reject(new Error('no picture was made'))),
        'image/png',
      ),
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** The page's own font for Latin letters as a rule with the file in it; null where there is none. */
async function embeddedFont(): Promise<string | null> {
  for (const sheet of document.styleSheets) {
    for (const rule of rulesOf(sheet)) {
      if (!(rule instanceof CSSFontFaceRule)) continue;
      const { style } = rule;
      const family = style.getPropertyValue('font-family');
      const range = style.getPropertyValue('unicode-range');
      // The part of the font that has the letters; others have accents and Cyrillic.
      if (!family.includes('Source Sans') || !/U\+0+(-|,|$)|U\+0-FF|U\+0000-00FF/i.test(range))
        continue;
      if (style.getPropertyValue('font-style') === 'italic') continue;
      const file = /url\("?([^")]+)"?\)/.exec(style.getPropertyValue('src'))?.[1];
      if (file === undefined) continue;
      const data = await dataOf(new URL(file, sheet.href ?? document.baseURI).href);
      if (data === null) continue;
      return `@font-face{font-family:${family};font-weight:200 900;src:url(${data}) format("woff2")}`;
    }
  }
  return null;
}

function rulesOf(sheet: CSSStyleSheet): readonly CSSRule[] {
  try {
    return [...sheet.cssRules];
  } catch {
    // A style sheet of another origin keeps its rules to itself.
    return [];
  }
}

async function dataOf(address: string): Promise<string | null> {
  try {
    const blob = await (await fetch(address)).blob();
    return await new Promise((resolve, reject) => {
      const reader = new FileReader();
      reader.onload = () => resolve(String(reader.result));
      reader.onerror = reject;
      reader.readAsDataURL(blob);
    });
  } catch {
    return null;
  }
}
