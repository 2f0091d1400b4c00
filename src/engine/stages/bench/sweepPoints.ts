import type { Working } from '../../fields/workings.ts';
import { asWorked } from './asWorked.ts';
import type { Point } from './point.ts';
import type { BenchSeen } from './seen.ts';

/** The least that a suppression has to reach. */
const atLeast40 = (source: string): Working => ({
  says: 'The least that is asked of a single-sideband transmitter.',
  formula: 'A_min',
  where: { A_min: { value: 40, unit: 'dB', says: 'least suppression', source } },
  source,
});

/** A suppression, but no more than can be seen. */
const withinRange = (suppression: number | null, seen: BenchSeen): number | null =>
  suppression === null ? null : Math.min(suppression, seen.dynamicRange);

const rangeWorking = (symbol: string, path: string, says: string): Working => ({
  says: `${says} No more than analyser and layout can show.`,
  formula: `min(${symbol}, D_max)`,
  where: { [symbol]: path, D_max: 'bench.dynamicRange' },
  source: 'the sheet named there',
});

/** Points read with counter, sweep or ear, in the order of work. */
export const sweepPoints: readonly Point[] = [
  {
    group: 'frequencies',
    step: 4,
    point: 'Carrier oscillator, frequency',
    instrument: 'Counter behind the buffer, after ten minutes',
    by: 'counter',
    needs: 'Carrier',
    expected: (seen) => seen.carrier,
    working: asWorked('f_c', 'carrier.frequency', 'Where the carrier belongs on this filter.'),
    spread: {
      fixed: 50,
      from: 'To be trimmed there. Before trimming ±200 Hz is usual on a crystal.',
    },
    sides: 'both',
    read: 'carrierRead',
    below:
      'Too much capacitance in series or stray, or too large a coil: less series capacitance raises it. Too low on an upper-sideband rig thins the voice; on a lower-sideband rig it leaks the other sideband.',
    above:
      'Too little capacitance in series, or too small a coil: more series capacitance or a coil lowers it.',
  },
  {
    group: 'levels',
    step: 6,
    point: 'Crystal filter, loss',
    instrument: 'Sweep between its own end resistances, 25–50 Hz steps',
    by: 'analyser',
    needs: 'Filter',
    expected: (seen) => seen.filterLoss,
    working: asWorked('A_f', 'filter.loss', 'Loss at the best point of the passband.'),
    spread: { share: 0.3, from: 'Crystals differ in Q by a third.' },
    sides: 'both',
    read: 'lossRead',
    below: 'Better crystals than assumed, or the fixture’s own loss taken off twice.',
    above:
      'Wrong end resistances (six decibels of mismatch have been blamed on crystals), one bad crystal (a deep notch, too), or lossy capacitors.',
  },
  {
    group: 'widths',
    step: 7,
    point: 'Crystal filter, width at −6 dB',
    instrument: 'Same sweep',
    by: 'counter',
    needs: 'Filter',
    expected: (seen) => seen.filterWidth,
    working: asWorked('B_6', 'filter.width6', 'Width six decibels below the best point.'),
    spread: {
      share: 0.06,
      from: '5 % capacitors; the width goes as one over the coupling capacitors.',
    },
    sides: 'both',
    read: 'widthRead',
    below:
      'Coupling capacitors too large (10 % more is 9 % narrower), stray across the crystals (1 pF is 3 %), or ends too high.',
    above: 'Coupling capacitors too small, or ends too low: then it has humps as well.',
  },
  {
    group: 'levels',
    step: 8,
    point: 'Two-way amplifier, gain',
    instrument: 'Generator and oscilloscope or analyser, into its design load, small signal',
    by: 'analyser',
    needs: 'Transmit',
    expected: (seen) => seen.amplifierGain,
    working: asWorked('G_amp', 'transmit.amplifierGain', 'Power in the load over power in.'),
    spread: { fixed: 2, from: 'Transistor, bias and transformer.' },
    sides: 'both',
    read: 'amplifierRead',
    below: 'Bias off, transformer reversed or with too few turns, emitter capacitor missing.',
    above: 'Feedback resistor open or too large: expect instability.',
  },
  {
    group: 'levels',
    step: 9,
    point: 'Receiver, rise of noise with the antenna',
    instrument: 'Audio voltmeter or sound card, antenna against dummy load',
    by: 'analyser',
    needs: 'Receive',
    expected: (seen) => seen.noiseRise,
    working: asWorked(
      'N_rise',
      'receive.noiseRise',
      'Band noise and receiver noise over receiver noise alone.',
    ),
    spread: {
      fixed: 10,
      from: 'Noise of one kind of place differs by 10 dB (ITU-R P.372 deciles), antennas by more.',
    },
    sides: 'both',
    read: 'noiseRiseRead',
    limit: {
      sides: 'atLeast',
      value: () => 4,
      working: {
        says: 'The least rise that shows the band rather than the receiver to set the limit.',
        formula: 'N_min',
        where: { N_min: { value: 4, unit: 'dB', says: 'least rise' } },
        source: 'common practice, no source: 4 dB at least, 10 dB comfortable',
      },
      spare: 6,
    },
    below:
      'A deaf receiver: front end detuned, lossy antenna or feed line, carrier drive of the detector missing.',
    above: 'A noisier place than assumed: look for switch-mode supplies nearby.',
  },
  {
    group: 'levels',
    step: 17,
    point: 'Carrier suppression at the output',
    instrument: 'Analyser behind 30–50 dB, steady tone to full power, then none',
    by: 'analyser',
    needs: 'Transmit',
    expected: (seen) => withinRange(seen.carrierDown, seen),
    working: rangeWorking(
      'A_car',
      'transmit.carrierSuppression',
      'Modulator’s null and filter together.',
    ),
    spread: { fixed: 6, from: 'The null depends on trimming and on how well the diodes match.' },
    sides: 'atLeast',
    read: 'carrierDownRead',
    limit: {
      sides: 'atLeast',
      value: () => 40,
      working: atLeast40('47 CFR 80.207 (maritime), as a yardstick'),
    },
    below:
      'Null not trimmed (resistor and capacitor in turns), carrier too near the passband, or carrier leaking round the filter.',
    above: '',
  },
  {
    group: 'levels',
    step: 19,
    point: 'Other sideband, 1 kHz tone',
    instrument: 'Analyser or second receiver, 1 kHz tone',
    by: 'analyser',
    needs: 'Carrier',
    expected: (seen) => withinRange(seen.opposite, seen),
    working: rangeWorking(
      'S_1k',
      'carrier.suppression1k',
      'The filter’s skirt, 1 kHz on either side.',
    ),
    spread: { fixed: 3, from: 'Carrier within 50 Hz, skirt within the filter’s tolerance.' },
    sides: 'atLeast',
    read: 'oppositeRead',
    limit: {
      sides: 'atLeast',
      value: () => 40,
      working: atLeast40('common practice, no source'),
    },
    below:
      'Carrier too near the passband, or leakage across the filter: grounded cans and a screen give over 80 dB.',
    above: '',
  },
];
