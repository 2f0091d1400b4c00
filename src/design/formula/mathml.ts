import type { Box } from './box.ts';

/** A box as presentation MathML (MathML Core: no attribute or element beyond it). */
export function mathml(box: Box): string {
  switch (box.is) {
    case 'row':
      return `<mrow>${box.of.map(mathml).join('')}</mrow>`;
    case 'number':
      return box.unit === undefined
        ? `<mn>${escaped(box.digits)}</mn>`
        : `<mrow><mn>${escaped(box.digits)}</mn>${gap(box.unit)}<mtext>${escaped(box.unit)}</mtext></mrow>`;
    case 'letter':
      // One letter leans by itself; upright has to be asked for. Longer names are upright anyway.
      return box.upright && [...box.text].length === 1
        ? `<mi mathvariant="normal">${escaped(box.text)}</mi>`
        : `<mi>${escaped(box.text)}</mi>`;
    case 'function':
      return `<mi>${escaped(box.text)}</mi>`;
    case 'words':
      return `<mtext>${escaped(box.text).replace(/^ | $/g, '\u00a0')}</mtext>`;
    case 'sign':
      // The stroke of an exponent takes no space about it.
      if (box.text === '/') return '<mo lspace="0" rspace="0">/</mo>';
      return box.form === 'infix'
        ? `<mo>${escaped(box.text)}</mo>`
        : `<mo form="${box.form}">${escaped(box.text)}</mo>`;
    case 'times':
      return box.seen
        ? '<mo>·</mo>'
        : '<mo lspace="0" rspace="0">\u2062</mo><mspace width="0.16em"></mspace>';
    case 'comma':
      return '<mo separator="true">,</mo>';
    case 'fraction':
      return `<mfrac>${mathml(box.over)}${mathml(box.under)}</mfrac>`;
    case 'power':
      return `<msup>${mathml(box.base)}${mathml(box.exponent)}</msup>`;
    case 'index':
      return `<msub>${mathml(box.base)}${mathml(box.index)}</msub>`;
    case 'root':
      return box.degree
        ? `<mroot>${mathml(box.of)}${mathml(box.degree)}</mroot>`
        : `<msqrt>${mathml(box.of)}</msqrt>`;
    case 'fence':
      return `<mrow>${fence(box.open, 'prefix')}${mathml(box.of)}${fence(box.close, 'postfix')}</mrow>`;
    case 'matrix':
      return `<mrow>${fence('[', 'prefix')}<mtable>${box.rows
        .map((cells) => `<mtr>${cells.map((cell) => `<mtd>${mathml(cell)}</mtd>`).join('')}</mtr>`)
        .join('')}</mtable>${fence(']', 'postfix')}</mrow>`;
    case 'cases':
      return `<mrow>${fence('{', 'prefix')}<mtable class="cases">${box.rows
        .map(({ value, when }) => {
          const words = when
            ? `<mtext>if\u00a0</mtext>${mathml(when)}`
            : '<mtext>otherwise</mtext>';
          return `<mtr><mtd displaystyle="true">${mathml(value)}</mtd><mtd><mrow>${words}</mrow></mtd></mtr>`;
        })
        .join('')}</mtable></mrow>`;
  }
}

const fence = (mark: string, form: 'prefix' | 'postfix'): string =>
  `<mo form="${form}" fence="true" stretchy="true">${escaped(mark)}</mo>`;

const gap = (unit: string): string => (unit === '°' ? '' : '<mspace width="0.2em"></mspace>');

const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
