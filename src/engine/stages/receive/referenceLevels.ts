import type { Look } from '../../fields/workings.ts';
import { S9 } from './sReports.ts';

/** Where the comfortable power is typed. */
export const comfortablePath = (look: Look): string =>
  look('receive.ears') === 'phones' ? 'receive.phonesListening' : 'receive.listening';

/** Sources and constants that several workings name. */
export const sum = 'sum of decibels';
export const sUnits = 'IARU Region 1 Technical Recommendation R.1';
export const milliwatt = { value: 1e-3, unit: 'W', says: 'one milliwatt' } as const;
export const s9 = { value: S9, unit: 'dBm', says: 'S9 below 30 MHz', source: sUnits } as const;
