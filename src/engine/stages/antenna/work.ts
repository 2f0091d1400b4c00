import { grounds } from '../../data/grounds.ts';
import { noResults, type Problem, type Seen, type Work } from '../../fields/stage.ts';
import { powerRatioOfDb } from '../../quantity/decibel.ts';
import { format } from '../../quantity/format.ts';
import {
  type Antenna,
  antennaGain,
  DIPOLE_GAIN,
  dipoleResistance,
  QUARTER_GAIN,
  QUARTER_RESISTANCE,
  SHORT_GAIN,
  shortResistance,
} from '../../waves/antennaGain.ts';
import { SPEED_OF_LIGHT } from '../../waves/freeSpaceLoss.ts';
import type { planFields } from '../plan/fields.ts';
import { antennaFields } from './fields.ts';
import type { antennaReads } from './reads.ts';
import { whipReactance } from './whipReactance.ts';

type AntennaSeen = Seen<typeof planFields | typeof antennaFields, typeof antennaReads>;

/** Elevations of the pattern: every degree. */
const DEGREES = 90;

/** What a level wire sends along the ground, against its gain without ground, dB. Common practice. */
export const ALONG_FROM_LEVEL = 20;

/** Where the antenna sends the power. */
export function workAntenna(seen: AntennaSeen): Work<typeof antennaFields> {
  if (seen.kind === 'known') return { results: noResults(antennaFields), problems: [] };
  const { frequency } = seen;
  const ground = grounds[seen.ground];
  const wavelength = SPEED_OF_LIGHT / frequency;
  const level = seen.kind === 'dipole' || seen.kind === 'endFed';
  const radiation = level
    ? dipoleResistance(seen.height, frequency, ground)
    : seen.kind === 'vertical'
      ? QUARTER_RESISTANCE
      : shortResistance(seen.length, frequency);
  const losses = level
    ? 0
    : seen.kind === 'vertical'
      ? seen.groundLoss
      : seen.groundLoss + whipReactance(seen.length, seen.wire, wavelength) / seen.coilQ;
  const efficiency = (radiation / (radiation + losses)) * powerRatioOfDb(-seen.matching);
  const made: Antenna = level
    ? { kind: 'horizontal', height: seen.height, off: seen.off, efficiency }
    : { kind: seen.kind === 'vertical' ? 'quarter' : 'short', efficiency };
  const elevation = Float64Array.from({ length: DEGREES }, (_, i) => ((i + 1) * Math.PI) / 180);
  const gain = elevation.map((angle) => antennaGain(made, angle, frequency, ground));
  const best = gain.reduce((most, g) => Math.max(most, g), Number.NEGATIVE_INFINITY);
  const bestAt = elevation[gain.indexOf(best)] ?? 0;
  const good = suits(gain);
  const most = level ? DIPOLE_GAIN : seen.kind === 'vertical' ? QUARTER_GAIN : SHORT_GAIN;
  const dbi = 10 * Math.log10(most * efficiency);
  return {
    results: {
      over: level ? seen.height / wavelength : null,
      radiation,
      losses: level ? null : losses,
      efficiency,
      along: level ? dbi - ALONG_FROM_LEVEL : dbi,
      free: level ? dbi : dbi - 10 * Math.log10(2),
      best,
      bestAt,
      nature: natureOf(good),
      good,
      pattern: { elevation, gain },
      made,
    },
    problems: problems(seen, wavelength, efficiency),
  };
}

/** By the gain at 60° against that at 15°. */
function suits(gain: Float64Array): 'near' | 'both' | 'far' {
  const difference = (gain[59] ?? 0) - (gain[14] ?? 0);
  if (difference > 6) return 'near';
  return difference < -6 ? 'far' : 'both';
}

const natureOf = (good: 'near' | 'both' | 'far'): string =>
  ({
    near: 'Most goes steeply up and comes down within some hundred kilometres.',
    both: 'Steep and flat rays alike: near and far stations.',
    far: 'Most goes out flat: far stations, and little for those between.',
  })[good];

function problems(seen: AntennaSeen, wavelength: number, efficiency: number): Problem[] {
  const out: Problem[] = [];
  const level = seen.kind === 'dipole' || seen.kind === 'endFed';
  if (level && seen.height < wavelength / 10) {
    out.push({
      field: 'antenna.height',
      weight: 'warns',
      says: `${format(seen.height, 'm', 2)} is less than a tenth of the wavelength: the ground takes more than is reckoned here, perhaps half.`,
      try: `From ${format(wavelength / 10, 'm', 2)} up the figures hold.`,
    });
  }
  if (seen.kind === 'whip' && seen.length > wavelength / 8) {
    out.push({
      field: 'antenna.length',
      weight: 'warns',
      says: `${format(seen.length, 'm', 2)} is no short whip any more at this frequency.`,
      try: 'Take the quarter-wave vertical.',
    });
  }
  if (efficiency < 0.1) {
    out.push({
      field: seen.kind === 'whip' ? 'antenna.length' : 'antenna.groundLoss',
      weight: 'warns',
      says: `Only ${format(efficiency, '%', 2)} of the power is radiated; the rest warms coil and ground.`,
      try: 'A longer whip, a better coil, more metal for its ground. Receiving suffers less: noise is lost with the signal.',
    });
  }
  return out;
}
