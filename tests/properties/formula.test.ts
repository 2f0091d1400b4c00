import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { symbolParts } from '../../src/design/formula/symbol.ts';
import { toMathML, toMathMLWithNumbers } from '../../src/design/formula/toMathML.ts';
import { math } from '../../src/engine/quantity/expressionMath.ts';

/** An element of MathML as the tests read it, by eyes other than the typesetter's. */
interface Element {
  name: string;
  attributes: string;
  children: Element[];
  text: string;
}

function elements(markup: string): Element {
  const root: Element = { name: '', attributes: '', children: [], text: '' };
  const open = [root];
  for (const [, closing, name = '', attributes = '', text] of markup.matchAll(
    /<(\/?)([a-z]+)([^<>]*)>|([^<>]+)/g,
  )) {
    const inner = open.at(-1);
    if (!inner) throw new Error('closed too often');
    if (text !== undefined) {
      inner.text += text;
    } else if (closing) {
      if (inner.name !== name) throw new Error(`${inner.name} closed as ${name}`);
      open.pop();
    } else {
      const element = { name, attributes, children: [], text: '' };
      inner.children.push(element);
      open.push(element);
    }
  }
  if (open.length !== 1) throw new Error('left open');
  return root;
}

/** Reads a formula back as the eye would: no brackets but those that are printed. */
function read({ name, children, text }: Element): string {
  const [first, second] = children.map(read);
  switch (name) {
    case 'mfrac':
      return `((${first})/(${second}))`;
    case 'msqrt':
      return `sqrt(${children.map(read).join('')})`;
    case 'mroot':
      return `nthRoot(${first}, ${second})`;
    case 'msup':
      return `${first}^(${second})`;
    case 'msub':
      return first === 'log' ? `log${second}` : `${first}_${second}`;
    case 'mo':
      return { '−': '-', '·': '*', '\u2062': '*', '≤': '<=', '≥': '>=' }[text] ?? text;
    case 'mi':
      return { π: 'pi', ω: 'omega', ln: 'log' }[text] ?? text;
    case 'mn':
      return text;
    case 'mspace':
      return '';
    default:
      return children.map(read).join('');
  }
}

const symbols = { L_m: 3.1, C_0: 0.7, f_s: 1.9, omega: 2.3, k: 0.4, R: 5.3 };

// Random formulas with every bracket typed, so that what is left out is the typesetter's doing.
const formula = fc.letrec<{ any: string }>((tie) => ({
  any: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc.constantFrom(...Object.keys(symbols), 'pi', '2', '0.5', '1', '10'),
    fc
      .tuple(tie('any'), fc.constantFrom('+', '-', '*', '/', '*', '/'), tie('any'))
      .map(([left, sign, right]) => `(${left} ${sign} ${right})`),
    fc
      .tuple(tie('any'), fc.constantFrom('+', '-', '*', '/'), tie('any'), fc.constantFrom('*', '/'))
      .map(([left, sign, right, next]) => `(${left} ${sign} ${right} ${next} ${left})`),
    fc
      .tuple(tie('any'), fc.constantFrom('2', '3', '(1/2)', '-1', 'k', '(k / 2)'))
      .map(([base, exponent]) => `(abs(${base})^${exponent} + 0)`),
    fc.tuple(tie('any'), fc.constantFrom('2', '3')).map(([base, raised]) => `(${base})^${raised}`),
    tie('any').map((inner) => `(-${inner})`),
    tie('any').map((inner) => `sqrt(abs(${inner}))`),
    tie('any').map((inner) => `log10(1 + abs(${inner}))`),
    tie('any').map((inner) => `cos(${inner})`),
  ),
})).any;

const value = (expression: string): number =>
  Number(
    math
      .parse(expression.replace(/\|([^|]*)\|/g, 'abs($1)'))
      .compile()
      .evaluate({ ...symbols }),
  );

const same = (found: number, wanted: number): boolean =>
  Object.is(found, wanted) ||
  (!Number.isFinite(wanted) && !Number.isFinite(found)) ||
  Math.abs(found - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted));

describe('A formula means what it meant', () => {
  // Bars are alike on both sides and can't be read back nested, so the check leaves them to one.
  const noBars = (expression: string): string => expression.replace(/abs\(/g, 'bars(');

  test('read back from MathML by the eye, it has the value of the expression', () => {
    fc.assert(
      fc.property(formula, (expression) => {
        const seen = read(elements(toMathML(noBars(expression)).mathml)).replace(/bars\(/g, 'abs(');
        // cos²(x) is the one notation that isn't read from left to right.
        const plain = seen.replace(/cos\^\((\d)\)(\()/g, 'cosP$1$2');
        const found = value(raiseCosines(plain));
        expect(same(found, value(expression)), `${expression} → ${seen}`).toBe(true);
      }),
      { numRuns: 600 },
    );
  });

  test('so has the plain text', () => {
    fc.assert(
      fc.property(formula, (expression) => {
        const { text } = toMathML(noBars(expression));
        const seen = text
          .replace(/bars\(/g, 'abs(')
          .replace(/−/g, '-')
          .replace(/·/g, '*')
          .replace(/√/g, 'sqrt')
          .replace(/π/g, 'pi')
          .replace(/ω/g, 'omega')
          .replace(/log_10/g, 'log10')
          .replace(/cos\^(\d)\(/g, 'cosP$1(');
        const found = value(raiseCosines(seen));
        expect(same(found, value(expression)), `${expression} → ${text}`).toBe(true);
      }),
      { numRuns: 600 },
    );
  });

  /** cosP2(x) → (cos(x))^2, the bracket found by counting. */
  function raiseCosines(text: string): string {
    const at = text.search(/cosP\d\(/);
    if (at < 0) return text;
    let [depth, end] = [0, at + 5];
    do {
      if (text[end] === '(') depth += 1;
      if (text[end] === ')') depth -= 1;
      end += 1;
    } while (depth > 0);
    const call = `cos${text.slice(at + 5, end)}`;
    return raiseCosines(`${text.slice(0, at)}(${call})^${text[at + 4]}${text.slice(end)}`);
  }
});

describe('MathML Core', () => {
  // Elements and attributes of MathML Core (W3C), as far as the typesetter has need of them.
  const core: Readonly<Record<string, readonly string[]>> = {
    math: ['displaystyle'],
    mrow: [],
    mi: ['mathvariant'],
    mn: [],
    mo: ['form', 'fence', 'stretchy', 'separator', 'lspace', 'rspace'],
    mtext: [],
    mspace: ['width'],
    mfrac: [],
    msup: [],
    msub: [],
    msqrt: [],
    mroot: [],
    mtable: ['class'],
    mtr: [],
    mtd: ['displaystyle'],
  };
  const exactly: Readonly<Record<string, number>> = { mfrac: 2, msup: 2, msub: 2, mroot: 2 };

  function check(element: Element): void {
    for (const child of element.children) {
      const allowed = core[child.name];
      expect(allowed, child.name).toBeDefined();
      for (const [, attribute = ''] of child.attributes.matchAll(/([a-z]+)="[^"]*"/g)) {
        expect(allowed, child.name).toContain(attribute);
      }
      const count = exactly[child.name];
      if (count !== undefined) expect(child.children, child.name).toHaveLength(count);
      check(child);
    }
  }

  test.each([
    '1/(2*pi*sqrt(L_m*C_m))',
    '(V_cc-V_sat)^2/(2*P)',
    'theta >= 2 * pi ? "a" : theta > pi ? "ab" : "c"',
    '0 < x < 1 and not (y == 2) ? x : abs(-y)',
    'nthRoot(x, 3) + cbrt(y) + x^(1/4)',
    'max(0, L_r - L_S9) + ceil(D / d_max) + sum([a, b])',
    'a & "<b>"',
  ])('%s is well formed', (expression) => {
    check(elements(toMathML(expression).mathml));
    check(elements(toMathMLWithNumbers(expression, { x: '1 < 2 & 3', L_m: '30 mH' }).mathml));
  });

  test('anything that is typed is set or shown as words, escaped', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), formula), fc.string(), (expression, words) => {
        check(elements(toMathML([words, expression], { a: words }).mathml));
        check(elements(toMathMLWithNumbers(expression, { k: words, a: words }).mathml));
      }),
      { numRuns: 800 },
    );
  });
});

describe('How formulas look', () => {
  test.each([
    ['1/(2*pi*sqrt(L_m*C_m))', '1/(2·π·√(L_m·C_m))'],
    ['20*log10(V/V_0)', '20·log_10(V/V_0)'],
    ['(V_cc-V_sat)^2/(2*P)', '(V_cc − V_sat)^2/(2·P)'],
    ['R_m*(1+C_0/C_L)^2', 'R_m·(1 + C_0/C_L)^2'],
    ['-2*pi*I/x', '−(2·π·I)/x'],
    ['a - (b - c)', 'a − (b − c)'],
    ['a - (b + c) + (d + e)', 'a − (b + c) + d + e'],
    ['parallel(R_1, R_2) * 2', '(R_1 ∥ R_2)·2'],
    ['cos(psi)^2', 'cos^2(ψ)'],
    ['exp(-t/tau)', 'e^(−t/τ)'],
    ['x^0.5', '√(x)'],
    ['1.5e-7', '1.5·10^−7'],
    ['x > 0 ? x : -x', 'x if x > 0; −x otherwise'],
  ])('%s', (expression, text) => {
    expect(toMathML(expression).text).toBe(text);
  });

  test('numbers with units take the places of symbols', () => {
    const { text, mathml } = toMathMLWithNumbers('(V_cc - V_sat)^2 / (2 * P) * k', {
      V_cc: '13.8\u00a0V',
      V_sat: '1.0\u00a0V',
      P: '5.00\u00a0W',
    });
    expect(text.replace(/\u00a0/g, ' ')).toBe('((13.8 V − 1.0 V)^2·k)/(2·5.00 W)');
    expect(mathml).toContain('<mn>13.8</mn><mspace width="0.2em"></mspace><mtext>V</mtext>');
  });

  test('a negative number is bracketed in a product, a number with unit under a power', () => {
    const values = { a: '−3.0\u00a0dB', b: '2.0\u00a0V' };
    const { text } = toMathMLWithNumbers('2*a + b^2 - a', values);
    expect(text.replace(/\u00a0/g, ' ')).toBe('2·(−3.0 dB) + (2.0 V)^2 − (−3.0 dB)');
  });

  test('several sides are joined by equals signs, and names may differ from the symbols', () => {
    expect(toMathML(['fs', 'a', 'b/c'], { fs: 'f_s' }).text).toBe('f_s = a = b/c');
  });

  test('symbols fall into letter and index', () => {
    expect(symbolParts('L_m')).toEqual({ letter: 'L', index: 'm' });
    expect(symbolParts('omega_0')).toEqual({ letter: 'ω', index: '0' });
    expect(symbolParts('f0')).toEqual({ letter: 'f', index: '0' });
    expect(symbolParts('I_q_max')).toEqual({ letter: 'I', index: 'q max' });
  });
});
