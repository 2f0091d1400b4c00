import { type Battery, type BatteryKey, batteries, cellPiece } from '../../data/batteries.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { supplyFields } from './fields.ts';

const practice = 'common practice, no source';
const makers = 'makers’ curves, from memory';
const batteryOf = (look: Look): Battery =>
  batteries[look('supply.battery') as BatteryKey] ?? batteries.lead;

const usable = (look: Look): Bound => ({
  value: batteryOf(look).usable,
  unit: '1',
  says: 'share that may be used',
  source: practice,
});

/** Volts of the battery with a share drawn: `drawn` names it, bound before this. */
function voltsFormula(look: Look, drawn: number, name: string) {
  const { from, volts, to, toVolts } = cellPiece(batteryOf(look), drawn);
  return {
    formula: `n_c * (U_a + (U_b - U_a) * (${name} - s_a) / (s_b - s_a))`,
    where: {
      n_c: 'supply.strung',
      U_a: { value: volts, unit: 'V', says: 'of a cell, point before', source: makers },
      U_b: { value: toVolts, unit: 'V', says: 'of a cell, point after', source: makers },
      s_a: { value: from, unit: '1', says: 'drawn by then', source: makers },
      s_b: { value: to, unit: '1', says: 'drawn by then', source: makers },
    } satisfies Record<string, Bound>,
  };
}

/** What the final gives from a voltage. */
const powerFrom = (volts: string): Pick<Working & { formula: string }, 'formula' | 'where'> => ({
  formula: 'P_PEP * min(1, max(V_b - V_sat, 0 * V_b) / (V_cc - V_sat + R_sup * I_dc))^2',
  where: {
    P_PEP: 'plan.pep',
    V_b: volts,
    V_sat: 'transmit.saturation',
    V_cc: 'plan.supply',
    R_sup: 'transmit.supplyResistance',
    I_dc: 'transmit.dcCurrent',
  },
});

const squareLaw =
  'closed form: P = V²/(2R), the current falling with the swing; no more than the drive asks for';

type BatteryKeys =
  | 'hours'
  | 'strung'
  | 'fullVoltage'
  | 'endVoltage'
  | 'endPower'
  | 'endLoss'
  | 'discharge.voltage'
  | 'discharge.power'
  | 'short';

/** The battery: how long, how many volts, how many watts. */
export const batteryWorkings: Pick<StageWorkings<typeof supplyFields>, BatteryKeys> = {
  hours: (look) => {
    const { over, peukert, source } = batteryOf(look);
    return {
      says: 'The usable share of what Peukert leaves of the capacity; never more than is printed.',
      formula: 's_u * min(T_r * (C_bat / (I_m * T_r))^k, C_bat / I_m)',
      where: {
        s_u: usable(look),
        T_r: { value: over, unit: 'h', says: 'time that the capacity is printed for', source },
        C_bat: 'supply.capacity',
        I_m: 'supply.mean',
        k: {
          value: peukert,
          unit: '1',
          says: 'Peukert’s exponent',
          source: `${practice}: lead 1.1 to 1.3`,
        },
      },
      source: 'Peukert, Elektrotechnische Zeitschrift 20, 1897',
      assumes: 'A new battery at 20 °C; speaking and listening count by their mean.',
    };
  },
  strung: (look) =>
    look('supply.cells') === null
      ? {
          says: 'As many as come nearest to the supply.',
          formula: 'max(1, floor(V_cc / U_c + 0.5))',
          where: {
            V_cc: 'plan.supply',
            U_c: {
              value: batteryOf(look).perCell,
              unit: 'V',
              says: 'supply for each cell',
              source: practice,
            },
          },
          source: practice,
        }
      : {
          says: 'As given.',
          formula: 'n_c0',
          where: { n_c0: 'supply.cells' },
          source: 'as typed',
        },
  fullVoltage: (look) => ({
    says: 'Full cells in series.',
    formula: 'n_c * U_f',
    where: {
      n_c: 'supply.strung',
      U_f: {
        value: batteryOf(look).cell[0]?.[1] ?? 0,
        unit: 'V',
        says: 'a full cell',
        source: makers,
      },
    },
    source: makers,
  }),
  endVoltage: (look) => {
    const { formula, where } = voltsFormula(look, batteryOf(look).usable, 's_u');
    return {
      says: 'The volts of a cell when what may be used is drawn, between two points of its curve.',
      formula,
      where: { s_u: usable(look), ...where },
      source: makers,
    };
  },
  endPower: {
    says: 'Into the same load the power goes with the square of the swing.',
    ...powerFrom('supply.endVoltage'),
    source: squareLaw,
  },
  endLoss: {
    says: 'As a ratio of powers.',
    formula: '10 * log10(P_end / P_PEP)',
    where: { P_end: 'supply.endPower', P_PEP: 'plan.pep' },
    source: 'definition of the decibel, ITU-R V.574',
  },
  'discharge.voltage': (look) => {
    const time = Number(look('point.time'));
    const share = batteryOf(look).usable;
    const { formula, where } = voltsFormula(
      look,
      (time / Number(look('supply.hours'))) * share,
      's',
    );
    return {
      says: 'The share drawn grows with time; between two points of the curve the volts fall straight.',
      formula,
      where: {
        t: 'point.time',
        s_u: usable(look),
        t_bat: 'supply.hours',
        s: { formula: 's_u * t / t_bat', unit: '1', says: 'share drawn' },
        ...where,
      },
      source: makers,
    };
  },
  'discharge.power': {
    says: 'With the square of the swing that these volts allow.',
    ...powerFrom('point.voltage'),
    source: squareLaw,
  },
  short: {
    says: 'Ohm’s law; nothing else is left in the circuit.',
    formula: 'V_full / R_sup',
    where: { V_full: 'supply.fullVoltage', R_sup: 'transmit.supplyResistance' },
    source: 'Ohm’s law',
  },
};
