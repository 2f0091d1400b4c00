import { formatTrimmed } from './format.ts';
import {
  dbmOfWatts,
  perRms,
  type SineVolts,
  voltsOfWatts,
  wattsOfDbm,
  wattsOfVolts,
} from './power.ts';
import type { Unit } from './units.ts';

/** A unit that may be typed where another is meant, and how one becomes the other. */
export interface Alternative {
  readonly unit: Unit;
  /** Null where the person must say more: the words are in `ask`. */
  readonly convert: ((value: number) => number) | null;
  readonly note?: string;
  readonly ask?: (typed: string) => string;
}

const ways = ['Vpp', 'Vpk', 'Vrms'] as const satisfies readonly SineVolts[];

const askWhich: Alternative = {
  unit: 'V',
  convert: null,
  ask: (typed) =>
    `${typed} V: peak to peak, peak or rms? Write ${typed} Vpp, ${typed} Vpk or ${typed} Vrms.`,
};

/**
 * The units that may stand in for `unit`. Power, level and the voltage of a sine stand for one
 * another across a resistance.
 *
 * @param across Ω; without it a voltage field takes no watts, and a power field assumes 50 Ω
 */
export function alternatives(unit: Unit, across?: number): readonly Alternative[] {
  const ohms = across !== undefined && across > 0 && Number.isFinite(across) ? across : 50;
  const note = `in ${formatTrimmed(ohms, 'Ω', 4)}`;
  switch (unit) {
    case 'W':
      return [
        { unit: 'dBm', convert: wattsOfDbm },
        ...ways.map((way) => ({
          unit: way,
          note,
          convert: (volts: number) => wattsOfVolts(volts, way, ohms),
        })),
        askWhich,
      ];
    case 'dBm':
      return [
        { unit: 'W', convert: dbmOfWatts },
        ...ways.map((way) => ({
          unit: way,
          note,
          convert: (volts: number) => dbmOfWatts(wattsOfVolts(volts, way, ohms)),
        })),
        askWhich,
      ];
    case 'Vpp':
    case 'Vpk':
    case 'Vrms': {
      const sine: Alternative[] = ways.map((way) => ({
        unit: way,
        note: 'taken as a sine',
        convert: (volts) => (volts * perRms[unit]) / perRms[way],
      }));
      const powers: Alternative[] = [
        { unit: 'W', note, convert: (watts) => voltsOfWatts(watts, unit, ohms) },
        { unit: 'dBm', note, convert: (dbm) => voltsOfWatts(wattsOfDbm(dbm), unit, ohms) },
      ];
      return [{ unit: 'V', convert: same }, ...sine, ...(across === undefined ? [] : powers)];
    }
    case 'Arms':
      return [
        { unit: 'A', convert: same },
        { unit: 'Apk', note: 'taken as a sine', convert: (amps) => amps / Math.SQRT2 },
      ];
    case 'Apk':
      return [
        { unit: 'A', convert: same },
        { unit: 'Arms', note: 'taken as a sine', convert: (amps) => amps * Math.SQRT2 },
      ];
    case '°C':
      return [{ unit: 'K', convert: same }];
    default:
      return [];
  }
}

const same = (value: number): number => value;
