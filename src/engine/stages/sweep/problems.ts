import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { plausibleUnit } from './columnTitles.ts';
import type { Fitted } from './fitted.ts';
import type { SweepSeen } from './seen.ts';
import type { Understood } from './understand.ts';

/** Fewest rows that a fit is tried on. */
const FEWEST = 8;

/** Lowest and highest frequency at which crystals of the fundamental mode are made, and some room. */
const CRYSTALS: readonly [number, number] = [0.2e6, 100e6];

const stops = (field: string, says: string, help: string): Problem => ({
  field: `sweep.${field}`,
  weight: 'stops',
  says,
  try: help,
});

const warns = (field: string, says: string, help: string): Problem => ({
  ...stops(field, says, help),
  weight: 'warns',
});

const hertz = (f: number) => format(f, 'Hz', 7);

/** Why this text cannot be fitted; null where it can. */
export function cannot({ text, sweep, level }: Understood): Problem | null {
  if (text.columns.length === 0) {
    return stops(
      'file',
      'No rows of numbers were found.',
      'A row holds a frequency and a level; the table of oddities says what else there is.',
    );
  }
  if (sweep === null) {
    return stops('file', 'No level was found beside a frequency.', 'Say which columns they are.');
  }
  const { frequency } = sweep;
  const rows = frequency.length;
  if (rows < FEWEST) {
    return stops(
      'file',
      `${rows} rows are too few: at least ${FEWEST}.`,
      'A hundred and more is usual.',
    );
  }
  const middle = frequency[rows >> 1] as number;
  if (middle < CRYSTALS[0] || middle > CRYSTALS[1]) {
    const raw = text.columns[sweep.taken.frequency - 1]?.values ?? new Float64Array();
    return stops(
      'unit',
      `The rows would lie about ${format(middle, 'Hz', 4)}, where no crystal is${text.unitSupposed ? '; the text names no unit' : ''}.`,
      `Choose ${plausibleUnit(raw)} as the unit of the frequency.`,
    );
  }
  const highest = Math.max(...level);
  const peak = level.indexOf(highest);
  if (!(highest - Math.min(...level) > 3)) {
    return stops(
      'file',
      'All rows pass about as much: there is no peak.',
      'Sweep across series resonance, and check which column is the level.',
    );
  }
  if (peak < 2 || peak > rows - 3) {
    const where = peak < 2 ? 'start' : 'end';
    return stops(
      'file',
      `The peak is not in the sweep: the most comes through at its ${where}, at ${hertz(frequency[peak] as number)}.`,
      `Sweep further ${peak < 2 ? 'down' : 'up'}.`,
    );
  }
  return null;
}

/** Why the fit gives no crystal; null where it does. */
export function noCrystal({ fit, c0, answering }: Fitted, resistance: number): Problem | null {
  const { fs, lm, rm, rest, rms, spread } = fit;
  if (!rest || !(lm > 1e-6 && lm < 100 && fs > 0 && rm > -2 * resistance) || rms > 6) {
    return stops(
      'file',
      'No crystal makes this sweep: the fit finds no bottom.',
      'Check the columns, the resistance at each side, and that there is one crystal in the fixture.',
    );
  }
  const { perDb, doubt } = answering.lm;
  if (Math.hypot(spread * perDb, doubt) > 0.5 * lm) {
    return stops(
      'file',
      'The rows don’t tell how wide the peak is.',
      'More rows on it: steps of a tenth of its width.',
    );
  }
  if (!(c0 > 0)) {
    return stops(
      'file',
      'The capacitance across the crystal comes out below zero.',
      'Check the fixture’s own stray on Measure, and the unit of the frequency.',
    );
  }
  return null;
}

/** What to look at before the figures are believed. */
export function cautions(
  seen: SweepSeen,
  { text, sweep, loose, resistance }: Understood,
  { fit, c0From, frequency, level, answering }: Fitted,
  figures: { width: number; step: number; ring: number },
): Problem[] {
  const found: Problem[] = [];
  const { fs, lm, rm, c0, spread } = fit;
  const error = (of: keyof typeof answering) => {
    const { perDb, doubt } = answering[of];
    return Math.sqrt((spread * perDb) ** 2 + doubt ** 2);
  };
  const { width, step, ring } = figures;
  const nominal = seen.marking ?? seen.nominal;
  const highest = Math.max(...level);

  if (text.unitSupposed && sweep?.unit !== undefined && seen.unit === 'auto') {
    found.push(
      warns(
        'unit',
        `The text names no unit; ${sweep.unit} is supposed.`,
        'Choose the unit to be sure.',
      ),
    );
  }
  if (nominal !== null && Math.abs(fs / nominal - 1) > 0.02) {
    found.push(
      warns(
        'file',
        `The peak lies ${format(Math.abs(fs - nominal), 'Hz', 3)} from the frequency on the Plan.`,
        'Is it a crystal of this rig, and the unit right?',
      ),
    );
  }
  if (step > 1.05 * (width / 10)) {
    found.push(
      warns(
        'file',
        `The rows at the peak are ${format(step, 'Hz', 3)} apart, the peak is ${format(width, 'Hz', 3)} wide.`,
        `Steps of ${format(width / 10, 'Hz', 2)} and less tell Rm and Lm best: sweep a narrower span, or more points.`,
      ),
    );
  }
  if (seen.ifBandwidth !== null && seen.ifBandwidth > 1 / (5 * ring)) {
    const much = seen.ifBandwidth * ring > 1;
    found.push(
      warns(
        'ifBandwidth',
        `An analyser of ${format(seen.ifBandwidth, 'Hz', 3)} waits ${much ? 'less than a ring time' : 'only a few ring times'} (${format(ring, 's', 2)}) at each step: the peak is ${much ? 'smeared and shifted' : 'a little rounded'}.`,
        `${format(1 / (5 * ring), 'Hz', 2)} or less.`,
      ),
    );
  }
  if (loose) {
    found.push(
      warns(
        'throughVolts',
        'Volts alone don’t tell what a wire would pass: the level is found by the fit.',
        'Measure the volts with a wire in place of the crystal.',
      ),
    );
  }
  if (!loose && seen.levelFree === 'held' && highest > 0.2) {
    found.push(
      warns(
        'through',
        `${format(highest, 'dB', 3)} more comes through at the peak than through a wire.`,
        'Type the reading with a wire in place of the crystal, or let the fit find the level.',
      ),
    );
  }
  if (rm <= 0 || error('rm') > 0.05 * rm) {
    found.push(
      warns(
        rm <= 0 ? 'through' : 'rt',
        rm <= 0
          ? `Rm comes out below zero: ${format(rm, 'Ω', 2)} ± ${format(error('rm'), 'Ω', 2)}.`
          : `Rm is known to ± ${format(error('rm') / rm, '%', 2)} only, beside ${format(2 * resistance, 'Ω', 3)} of the fixture.`,
        'A fixture of fewer ohms, more rows at the peak, and the reading with a wire.',
      ),
    );
  }
  if (error('lm') > 0.02 * lm) {
    found.push(
      warns(
        'file',
        `Lm and Cm are known to ± ${format(error('lm') / lm, '%', 2)} only.`,
        'More rows on the peak and its skirts.',
      ),
    );
  }
  if (c0From !== 'sweep') {
    const fp = fs * (1 + 1 / (2 * (2 * Math.PI * fs) ** 2 * lm * c0));
    found.push(
      warns(
        'c0Known',
        `The sweep does not tell C0: ${c0From === 'known' ? 'what was given is kept' : `${format(c0, 'F', 2)}, as is usual, is taken`}.`,
        `Sweep on to the dip, about ${hertz(fp)}, or measure it.`,
      ),
    );
  } else if (error('c0') > 0.05 * c0) {
    found.push(
      warns(
        'c0Known',
        `C0 is known to ± ${format(error('c0') / c0, '%', 2)} only.`,
        'Sweep past the dip at parallel resonance.',
      ),
    );
  }
  if (seen.shuntFree === 'free' && !fit.shuntFitted) {
    found.push(
      warns(
        'shuntFree',
        'The sweep does not tell the capacitance to ground: what was given is kept.',
        'It shows in fixtures of 100 Ω and more, with an angle in the sweep.',
      ),
    );
  }
  if (fit.rms > 0.5) {
    found.push(
      warns(
        'file',
        `The fit leaves ${format(fit.rms, 'dB', 4)}: one crystal between two resistances is not all there is.`,
        'Look at what is left over: a slope is the fixture, a bump another response.',
      ),
    );
  }
  if (frequency.length > 0 && fit.discounted > 0.1 * frequency.length) {
    found.push(
      warns(
        'file',
        `${fit.discounted} of ${frequency.length} rows lie far off the fitted curve.`,
        'Other responses of the crystal, or interference.',
      ),
    );
  }
  return found;
}
