import type { Box } from './box.ts';

/** A box on one line, for the clipboard, Markdown and where MathML isn't shown. */
export function plainText(box: Box): string {
  switch (box.is) {
    case 'row':
      return box.of.map(plainText).join('');
    case 'number':
      if (box.unit === undefined) return box.digits;
      return box.unit === '°' ? `${box.digits}°` : `${box.digits}\u00a0${box.unit}`;
    case 'letter':
    case 'function':
    case 'words':
      return box.text;
    case 'sign':
      if (box.text === '/') return '/';
      return box.form === 'infix' ? ` ${box.text} ` : box.text;
    case 'times':
      return '·';
    case 'comma':
      return ', ';
    case 'fraction':
      return `${box.over.is === 'power' ? plainText(box.over) : single(box.over)}/${single(box.under)}`;
    case 'power':
      return `${single(box.base)}^${single(box.exponent)}`;
    case 'index':
      return `${plainText(box.base)}_${plainText(box.index).replace(/ /g, '_')}`;
    case 'root': {
      const mark = box.degree ? `${raised(plainText(box.degree))}√` : '√';
      return `${mark}(${plainText(box.of)})`;
    }
    case 'fence':
      return `${box.open}${plainText(box.of)}${box.close}`;
    case 'matrix':
      return `[${box.rows.map((cells) => cells.map(plainText).join(', ')).join('; ')}]`;
    case 'cases':
      return box.rows
        .map(({ value, when }) =>
          when ? `${plainText(value)} if ${plainText(when)}` : `${plainText(value)} otherwise`,
        )
        .join('; ');
  }
}

/** Brackets about what the stroke or the raising would tear apart. */
function single(box: Box): string {
  const text = plainText(box);
  const whole = ['number', 'letter', 'index', 'fence', 'matrix', 'root', 'function'].includes(
    box.is,
  );
  const call = box.is === 'row' && box.of.length === 2 && box.of[1]?.is === 'fence';
  return (whole && !(box.is === 'number' && box.unit)) || call ? text : `(${text})`;
}

const raised = (digits: string): string =>
  digits.replace(/\d/g, (digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)] ?? digit);
