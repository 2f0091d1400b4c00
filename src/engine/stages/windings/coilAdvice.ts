import { bunchedRise } from '../../circuit/winding/bunchedRise.ts';
import { SPREAD } from '../../circuit/winding/toroidCoil.ts';
import { cores } from '../../data/cores.ts';
import { format } from '../../quantity/format.ts';
import type { ShelfCore } from '../cores/fields.ts';
import { shareFor, shareWords } from './shareFor.ts';

/** Near enough to leave it alone. */
const RIGHT = 0.03;

/** Less missing than this is not worth a word. */
const SHORT = 0.01;

/** A reading so far beyond what core and turns can give has another cause. */
const BEYOND = 0.05;

/** What there is to know of a coil when its reading is judged. */
export interface JudgedCoil {
  /** Measured, H; null where it isn't yet. */
  readonly own: number | null;
  /** H. */
  readonly wanted: number;
  readonly turns: number;
  /** With these turns spread, and pushed together, H. */
  readonly lAt: number;
  readonly lBunched: number;
  /** Share of the circumference that touching turns take. */
  readonly coverage: number;
  readonly core: ShelfCore;
}

/** What to do with the coil as the meter reads it, or what can be done once it is wound. */
export function coilAdvice(coil: JudgedCoil): string {
  const { own, wanted, turns, lAt, lBunched } = coil;
  const gain = lBunched / lAt - 1;
  if (own === null) {
    const more = format((1 + 1 / turns) ** 2 - 1, '%', 2);
    const less = format(1 - (1 - 1 / turns) ** 2, '%', 2);
    if (lBunched < wanted * (1 - SHORT)) {
      return `On a nominal core ${format(1 - lBunched / wanted, '%', 2)} short, however close: one more turn adds ${more}, thinner wire leaves room to squeeze.`;
    }
    return `Spread it first. Squeezing adds up to about ${format(gain, '%', 1)}, one more turn ${more}; a turn off takes ${less}.`;
  }
  const strange = strangeness(coil, own);
  if (strange !== null) return strange;
  const off = own / wanted - 1;
  if (Math.abs(off) <= RIGHT) return 'Right: fix the turns with a drop of wax.';
  return off > 0 ? tooMuch(coil, own, gain) : tooLittle(coil, own, gain);
}

function tooMuch({ wanted, turns }: JudgedCoil, own: number, gain: number): string {
  const by = `${format(own / wanted - 1, '%', 2)} too much`;
  const off = Math.round(turns * (1 - Math.sqrt(wanted / own)));
  // Spreading takes back only what squeezing gave: half of it is left, for a winding of the usual kind.
  if (off < 1 || turns - off < 1) {
    return `${by}: spread the turns, which takes up to ${format(gain / (1 + gain), '%', 1)} where they stand close.`;
  }
  const left = own * ((turns - off) / turns) ** 2;
  const first = own / wanted <= 1 + gain ? 'spread the turns; if they are spread, ' : '';
  return `${by}: ${first}take ${turnsWords(off)} off, for ${format(left, 'H', 3)}, then ${trim(left, wanted)}.`;
}

function tooLittle(coil: JudgedCoil, own: number, gain: number): string {
  const { wanted, turns, coverage, core } = coil;
  const by = `${format(1 - own / wanted, '%', 2)} too little`;
  if (wanted / own <= 1 + gain) {
    const ring = { permeability: core.mix.permeability, size: core.size };
    const share = shareFor(wanted / own, coverage, ring);
    return `${by}: squeeze the turns until they are ${shareWords(share)}.`;
  }
  const more = Math.max(1, Math.round(turns * (Math.sqrt(wanted / own) - 1)));
  const after = own * ((turns + more) / turns) ** 2;
  return `${by}, more than squeezing adds: ${turnsWords(more)} more, for ${format(after, 'H', 3)}, then ${trim(after, wanted)}.`;
}

const trim = (l: number, wanted: number): string => {
  if (Math.abs(l / wanted - 1) <= RIGHT) return 'fix them';
  return l > wanted ? 'spread them' : 'squeeze them';
};

const turnsWords = (n: number) => (n === 1 ? 'a turn' : `${n} turns`);

/**
 * A reading that these turns on this core can't give, however they stand: another number of turns, or
 * another mix, that would.
 */
function strangeness(coil: JudgedCoil, own: number): string | null {
  const { turns, lAt, lBunched, core, coverage } = coil;
  const { tolerance, permeability } = core.mix;
  const low = lAt * (1 - tolerance) * (1 - BEYOND);
  const high = lBunched * (1 + tolerance) * (1 + BEYOND);
  if (own >= low && own <= high) return null;
  const counted = Math.round(Math.sqrt(own / core.al));
  const ring = { permeability, size: core.size };
  const rise = bunchedRise(Math.min(coverage, SPREAD), ring) / bunchedRise(SPREAD, ring);
  const mixes = cores
    .filter(({ size, title }) => size === core.size && title !== core.title)
    .filter(({ al, mix }) => {
      const l = al * turns ** 2;
      return own >= l * (1 - mix.tolerance) && own <= l * rise * (1 + mix.tolerance);
    })
    .map(({ title }) => title);
  const causes = [
    ...(counted !== turns && counted >= 1 ? [`${counted} turns instead of ${turns}`] : []),
    ...(mixes.length > 0 ? [`${mixes.slice(0, 2).join(' or ')} instead of ${core.title}`] : []),
  ];
  const doubt = `${format(own, 'H', 3)} is beyond what ${turns} turns on ${core.title} give, ${format(lAt, 'H', 3)} to ${format(lBunched, 'H', 3)}`;
  return causes.length === 0
    ? `${doubt}: is it the right core, and does the meter suit so small a coil?`
    : `${doubt}: ${causes.join(', or ')}? Count inside the hole first.`;
}
