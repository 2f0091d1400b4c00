/** A run of digits understood as one decimal, or a question that only its writer can answer. */
export type Digits =
  | { readonly kind: 'decimal'; readonly text: string }
  | { readonly kind: 'question'; readonly first: string; readonly second: string }
  | { readonly kind: 'none' };

const none: Digits = { kind: 'none' };
const decimal = (text: string): Digits => ({ kind: 'decimal', text });

/**
 * Reads a run of digits with points, commas, apostrophes and spaces, unsigned: 9.991'974, 4,7,
 * 11.055.500, 11,984,800, 7 160 000. A comma (or mixed points and commas) that could be read in
 * two ways is a question, never a guess.
 *
 * @return the decimal as JavaScript writes it
 */
export function digits(run: string): Digits {
  const points = count(run, '.');
  const commas = count(run, ',');

  // Only apostrophes and spaces set off groups? Then at most one mark is left: the decimal one.
  if (points + commas === 0) return grouped(run);
  if (points + commas === 1) {
    const [whole = '', fraction = ''] = run.split(/[.,]/);
    const left = ungroup(whole, true);
    const right = ungroup(fraction, false);
    if (left === null || right === null || left + right === '') return none;
    // 7,160 is seven and a bit in half the world and seven thousand in the other half.
    if (commas === 1 && /^[1-9]\d{0,2}$/.test(whole) && /^\d{3}$/.test(fraction)) {
      return { kind: 'question', first: `${whole}.${fraction}`, second: whole + fraction };
    }
    return decimal(`${left || '0'}.${right || '0'}`);
  }

  // One kind of mark, several times: 11.055.500.
  if (points === 0 || commas === 0) return grouped(run.replace(/[.,]/g, "'"));

  // Both kinds: the last is the decimal one, and stands once.
  const last = run.lastIndexOf('.') > run.lastIndexOf(',') ? '.' : ',';
  if (count(run, last) > 1) return none;
  const [whole = '', fraction = ''] = run.split(last);
  const left = ungroup(whole.replace(/[.,]/g, "'"), true);
  const right = ungroup(fraction, false);
  if (left === null || right === null) return none;
  // 9.991,974 may be a decimal whose digits are grouped, as some write frequencies in MHz.
  if (last === ',' && points === 1 && /^\d{3}$/.test(fraction)) {
    return {
      kind: 'question',
      first: `${left}.${right}`,
      second: `${whole.replace('.', '')}${fraction}`.replace(/^(\d+)(\d{6})$/, '$1.$2'),
    };
  }
  return decimal(`${left}.${right || '0'}`);
}

function grouped(run: string): Digits {
  const plain = ungroup(run, true);
  return plain === null || plain === '' ? none : decimal(plain);
}

/** Groups of three, or null if the gaps stand anywhere else. */
function ungroup(run: string, whole: boolean): string | null {
  if (!/[' ]/.test(run)) return /^\d*$/.test(run) ? run : null;
  const shape = whole ? /^\d{1,3}(?:[' ]\d{3})+$/ : /^\d{3}(?:[' ]\d{3})*[' ]\d{1,3}$/;
  return shape.test(run) ? run.replace(/[' ]/g, '') : null;
}

const count = (run: string, mark: string): number => run.split(mark).length - 1;
