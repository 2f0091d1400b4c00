import type { RowOf } from '../../fields/kinds.ts';
import { format } from '../../quantity/format.ts';
import type { Unit } from '../../quantity/units.ts';
import type { FinalFigures } from './finalFigures.ts';
import type { heatResults } from './heatFields.ts';
import type { FinalSeen } from './seen.ts';
import { smallDevice } from './smallDevice.ts';

type Row = RowOf<typeof heatResults.limits.columns>;

/** Collector voltage over the supply's with the antenna off. Common practice, no source. */
export const ANTENNA_OFF = 4;
/** Transition over operating frequency that leaves useful gain. Common practice, no source. */
export const FREQUENCY_RATIO = 10;

/** Each limit in the order of the table. */
export const limitKeys = [
  'voltage',
  'antennaOff',
  'current',
  'speech',
  'tone',
  'frequency',
  'gain',
  'driverHeat',
  'driverVoltage',
] as const;
export type LimitKey = (typeof limitKeys)[number];

const names: Readonly<Record<LimitKey, string>> = {
  voltage: 'Final: collector voltage',
  antennaOff: 'Final: collector voltage, antenna off',
  current: 'Final: peak collector current',
  speech: 'Final: junction on speech',
  tone: 'Final: junction with the worst tone',
  frequency: 'Final: ten times the frequency, against its fT',
  gain: 'Final: current gain',
  driverHeat: 'Driver: junction, free-standing',
  driverVoltage: 'Driver: collector voltage',
};

/** How much of each limit is used, and how that is to be taken. */
export function limitRows(
  seen: FinalSeen,
  final: FinalFigures,
  stands: {
    readonly driverStanding: number;
    readonly peakCurrent: number;
    readonly junction: number;
    readonly junctionTone: number;
    readonly currentGainAsked: number;
    readonly currentGainThere: number;
  },
): Row[] {
  const driver = smallDevice(seen.driverDevice, seen);
  const rise = stands.driverStanding * seen.supply * driver.toAmbient;
  const figures: Record<LimitKey, readonly [number, number, Unit]> = {
    voltage: [2 * seen.supply - seen.saturation, final.limitVce, 'V'],
    antennaOff: [ANTENNA_OFF * seen.supply, final.limitVce, 'V'],
    current: [stands.peakCurrent, final.limitIc, 'A'],
    speech: [stands.junction, seen.junctionAllowed, '°C'],
    tone: [stands.junctionTone, seen.junctionAllowed, '°C'],
    frequency: [FREQUENCY_RATIO * seen.frequency, final.transition, 'Hz'],
    gain: [stands.currentGainAsked, stands.currentGainThere, '1'],
    driverHeat: [seen.ambient + rise, seen.junctionAllowed, '°C'],
    driverVoltage: [2 * seen.supply, driver.vceo, 'V'],
  };
  return limitKeys.map((key) => {
    const [value, limit, unit] = figures[key];
    // A temperature counts from that of the air.
    const base = unit === '°C' ? seen.ambient : 0;
    const used = (value - base) / (limit - base);
    return {
      what: names[key],
      used,
      outcome: used > 1 ? 'fails' : used > 0.8 ? 'close' : 'holds',
      stands: `${format(value, unit, 2)} of ${format(limit, unit, 2)}`,
    };
  });
}
