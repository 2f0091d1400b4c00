/** Room around the drawing, px: names may reach a little beyond it. */
const MARGIN = 12;

/** What a drawing's look is made of. */
const looks = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-dasharray',
  'stroke-linejoin',
  'stroke-opacity',
  'stroke-width',
  'opacity',
  'paint-order',
] as const;

const print = ['font-family', 'font-size', 'font-weight', 'font-variant-numeric'] as const;

export interface ChartWords {
  title: string;
  summary: string;
}

/**
 * A chart as a picture of its own: styles written into it, on white paper whatever the page looks
 * like, its font named, nothing in it to press.
 *
 * @param drawing the chart as it stands on the page
 */
export function chartImage(drawing: SVGSVGElement, { title, summary }: ChartWords): SVGSVGElement {
  const { width, height } = drawing.getBoundingClientRect();
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  for (const part of copy.querySelectorAll('.chart__reader, title, desc')) part.remove();
  // Within a place that has the colours of paper, so that the styles come out in them.
  const paper = document.createElement('div');
  paper.className = 'chart on-paper unseen';
  paper.setAttribute('aria-hidden', 'true');
  paper.append(copy);
  document.body.append(paper);
  try {
    // All are read before any is written: styles depend on the names of those around.
    const elements = [copy, ...copy.querySelectorAll<SVGElement>('*')];
    const seen = elements.map(looksOf);
    elements.forEach((element, i) => {
      write(element, seen[i] ?? []);
    });
    const ground = getComputedStyle(paper).getPropertyValue('--paper').trim() || '#fff';
    finish(copy, width, height, ground);
  } finally {
    paper.remove();
  }
  const named = (name: string, words: string) => {
    const element = document.createElementNS('http://www.w3.org/2000/svg', name);
    element.textContent = words;
    return element;
  };
  copy.prepend(named('title', title), named('desc', summary));
  return copy;
}

/** The picture as text. */
export const svgText = (image: SVGSVGElement): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(image)}\n`;

function looksOf(element: SVGElement): (readonly [string, string])[] {
  const computed = getComputedStyle(element);
  const words = element.localName === 'text' || element.localName === 'tspan';
  // A group lends its looks to nothing that has not its own.
  const group = /^(svg|g|defs|clipPath|pattern)$/.test(element.localName);
  const names: readonly string[] = group ? [] : words ? [...looks, ...print] : looks;
  return names
    .map((name) => [name, computed.getPropertyValue(name)] as const)
    .filter(([, value]) => value !== '');
}

function write(element: SVGElement, seen: readonly (readonly [string, string])[]): void {
  for (const { name } of [...element.attributes]) {
    if (/^(class|style|tabindex|role|cursor|aria-.*|data-.*)$/.test(name)) {
      element.removeAttribute(name);
    }
  }
  for (const [name, value] of seen) element.style.setProperty(name, value);
}

function finish(copy: SVGSVGElement, width: number, height: number, ground: string): void {
  const [wide, tall] = [Math.round(width) + 2 * MARGIN, Math.round(height) + 2 * MARGIN];
  copy.removeAttribute('style');
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(wide));
  copy.setAttribute('height', String(tall));
  copy.setAttribute('viewBox', `${-MARGIN} ${-MARGIN} ${wide} ${tall}`);
  const sheet = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  for (const [name, value] of Object.entries({
    x: -MARGIN,
    y: -MARGIN,
    width: wide,
    height: tall,
    fill: ground,
  })) {
    sheet.setAttribute(name, String(value));
  }
  copy.prepend(sheet);
}
