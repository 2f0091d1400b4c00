import { type Box, bracketed, row, sign } from './box.ts';

/** Fractions on one line: a stroke within an exponent would be too small to read. */
export function solidus(box: Box): Box {
  switch (box.is) {
    case 'row':
      return row(...box.of.map(solidus));
    case 'fraction':
      return row(whole(solidus(box.over)), sign('/'), whole(solidus(box.under)));
    case 'fence':
      return { ...box, of: solidus(box.of) };
    case 'power':
      return { ...box, base: solidus(box.base) };
    default:
      return box;
  }
}

const whole = (box: Box): Box =>
  box.is === 'row' && box.of.length > 1 && !isCall(box) ? bracketed(box) : box;

const isCall = (box: Box): boolean =>
  box.is === 'row' && box.of.length === 2 && box.of[1]?.is === 'fence';
