import type { Look, Working } from '../../fields/workings.ts';
import { voltageRatioOfDb } from '../../quantity/decibel.ts';
import { perRms, voltsOfWatts, wattsOfDbm } from '../../quantity/power.ts';
import { expectedPower, expectedPowerPath, rulingPower, rulingPowerPath } from './expectedPower.ts';
import type { Point } from './point.ts';

const sine = 'closed form: P = Vpp²/(8R)';
const milliwatt = { value: 1e-3, unit: 'W', says: 'one milliwatt' } as const;

interface ChainRow {
  readonly point: string | null;
  readonly level: number | null;
  readonly load: number | null;
}

/** Row of Transmit's levels by the name of its point. */
const rowAt = (rows: readonly ChainRow[] | null, point: string): ChainRow | undefined =>
  rows?.find((row) => row.point === point);

function chainVolts(rows: readonly ChainRow[] | null, point: string): number | null {
  const row = rowAt(rows, point);
  if (!row || row.level === null || row.load === null) return null;
  return voltsOfWatts(wattsOfDbm(row.level), 'Vpp', row.load);
}

function chainWorking(point: string, sidebands: 1 | 2) {
  return (look: Look): Working => {
    const row = rowAt(look('transmit.chain') as readonly ChainRow[] | null, point);
    return {
      says:
        sidebands === 1
          ? `Level and load of “${point}” in Transmit’s chain, as a voltage.`
          : `Level and load of “${point}” in Transmit’s chain, as a voltage; both sidebands are there and add at the crest.`,
      formula: `${sidebands === 2 ? '2 * ' : ''}sqrt(8 * R_row * P_ref * 10^(L_row / 10))`,
      where: {
        L_row: { value: row?.level ?? 0, unit: 'dBm', says: `level at “${point}”` },
        R_row: { value: row?.load ?? 0, unit: 'Ω', says: `load at “${point}”` },
        P_ref: milliwatt,
      },
      source: sine,
    };
  };
}

/** Points read with an oscilloscope or power meter, in the order of work. */
export const signalPoints: readonly Point[] = [
  {
    group: 'volts',
    step: 3,
    point: 'Audio behind the preamplifier, from S9',
    instrument: 'Oscilloscope; generator with −73 dBm at the antenna terminal, beat of 1 kHz',
    by: 'scope',
    needs: 'Receive',
    expected: ({ detectorVolts, preampGain }) =>
      detectorVolts === null || preampGain === null
        ? null
        : perRms.Vpp * detectorVolts * voltageRatioOfDb(preampGain),
    working: {
      says: 'Audio at the detector times the preamplifier’s gain, as a sine from peak to peak.',
      formula: '2 * sqrt(2) * V_det * 10^(A_pre / 20)',
      where: { V_det: 'receive.detectorVolts', A_pre: 'receive.preampGain' },
      source: 'closed form: a sine swings √2 times its rms value each way',
    },
    spread: { share: 0.5, from: 'Gains and losses of five blocks: 3 to 6 dB.' },
    sides: 'both',
    read: 'audioRead',
    below:
      'Halve the chain: inject behind the filter, then at the antenna. No beat at all: the carrier oscillator is not at the detector.',
    above: 'More gain than designed for: expect howling (motorboating); check rail decoupling.',
  },
  {
    group: 'volts',
    step: 5,
    point: 'Carrier oscillator, at the modulator',
    instrument: 'Oscilloscope, ×10 probe, 50 Ω in place of the modulator',
    by: 'scope',
    needs: 'Transmit',
    expected: (seen) =>
      seen.carrierDrive === null ? null : voltsOfWatts(seen.carrierDrive, 'Vpp', 50),
    working: {
      says: 'The carrier drive as a voltage in 50 Ω.',
      formula: 'sqrt(8 * P_LO * R_50)',
      where: {
        P_LO: 'transmit.carrierDrive',
        R_50: { value: 50, unit: 'Ω', says: 'resistance in place of the modulator' },
      },
      source: sine,
    },
    spread: { share: 0.2, from: 'Drive is not critical within 2 dB.' },
    sides: 'both',
    read: 'carrierVoltsRead',
    below: 'Diodes are starved: loss and distortion rise. A probe on ×1 also reads low.',
    above:
      'More carrier leaks and hiss rises: less oscillator gain. A mis-trimmed ×10 probe reads high.',
  },
  {
    group: 'volts',
    step: 10,
    point: 'Modulator’s output',
    instrument: 'Oscilloscope, ×10 probe, tone that makes full power: a bow tie',
    by: 'scope',
    needs: 'Transmit',
    expected: (seen) => {
      const one = chainVolts(seen.chain, 'Modulator, output');
      return one === null ? null : 2 * one;
    },
    working: chainWorking('Modulator, output', 2),
    spread: { share: 0.25, from: 'Conversion loss of diodes, 5 to 8 dB.' },
    sides: 'both',
    read: 'modulatorRead',
    below: 'Too little audio, a diode reversed, or the transformer’s phasing wrong.',
    above: 'More audio than needed: it flattens later on.',
  },
  {
    group: 'volts',
    step: 11,
    point: 'Driver’s collector',
    instrument: 'Oscilloscope, ×10 probe, tone that makes full power',
    by: 'scope',
    needs: 'Transmit',
    expected: (seen) => chainVolts(seen.chain, 'Driver, collector'),
    working: chainWorking('Driver, collector', 1),
    spread: { share: 0.25, from: 'Gains of all stages before it, and the final’s input.' },
    sides: 'both',
    read: 'driverRead',
    below: 'Halve the chain: compare the modulator, then each amplifier, to find where it is lost.',
    above: 'The final loads it too little: base lead or transformer open.',
  },
  {
    group: 'volts',
    step: 16,
    point: 'Output, voltage at the dummy load',
    instrument: 'Oscilloscope, ×10 probe, steady tone at full power',
    by: 'scope',
    needs: 'Plan',
    expected: (seen) => {
      const power = expectedPower(seen);
      return power === null ? null : voltsOfWatts(power, 'Vpp', seen.dummyLoad);
    },
    working: (look) => ({
      says: 'The power to expect as a voltage across the dummy load.',
      formula: 'sqrt(8 * P * R_d)',
      where: { P: expectedPowerPath(look), R_d: 'bench.dummyLoad' },
      source: sine,
    }),
    spread: { share: 0.12, from: '±1 dB of the plan: saturation, network loss, load.' },
    sides: 'both',
    read: 'outputRead',
    asVolts: true,
    below:
      'Low supply, too little drive, wrong turns on the matching transformer, or a lossy network: feel the coils.',
    above: 'Check the probe’s setting and the direct power before believing it.',
  },
  {
    group: 'volts',
    step: 18,
    point: 'Carrier left at the output',
    instrument: 'Oscilloscope, microphone cut off',
    by: 'scope',
    needs: 'Transmit',
    expected: (seen) =>
      seen.carrierPower === null ? null : voltsOfWatts(seen.carrierPower, 'Vpp', seen.dummyLoad),
    working: {
      says: 'What is left of the carrier, as a voltage across the dummy load.',
      formula: 'sqrt(8 * P_car * R_d)',
      where: { P_car: 'transmit.carrierPower', R_d: 'bench.dummyLoad' },
      source: sine,
    },
    spread: { share: 1, from: 'The null is good to 6 dB.' },
    sides: 'atMost',
    read: 'residualRead',
    limit: {
      sides: 'atMost',
      spare: 0,
      value: (seen) => {
        const power = rulingPower(seen);
        return power === null ? null : voltsOfWatts(power, 'Vpp', seen.dummyLoad) / 100;
      },
      working: (look) => ({
        says: 'Forty decibels, a hundredth of the voltage, below full power.',
        formula: 'sqrt(8 * P * R_d) / 100',
        where: {
          P: rulingPowerPath(look),
          R_d: 'bench.dummyLoad',
        },
        source: '47 CFR 80.207 (maritime), as a yardstick',
      }),
    },
    below: '',
    above:
      'Null not trimmed, hum or oscillation rather than carrier (unplug the carrier oscillator: what stays is not carrier), or leakage round the filter.',
  },
  {
    group: 'powers',
    step: 16,
    point: 'Output, power into the dummy load',
    instrument: 'Wattmeter or oscilloscope, steady tone at full power',
    by: 'power',
    needs: 'Plan',
    expected: expectedPower,
    working: (look) => ({
      says: 'As Output works it out from the network; the planned power until it can.',
      formula: 'P',
      where: { P: expectedPowerPath(look) },
      source: 'the sheet named there',
    }),
    spread: { share: 0.23, from: '±1 dB of the plan: saturation, network loss, load.' },
    sides: 'both',
    read: 'outputRead',
    below:
      'Low supply, too little drive, wrong collector load, or a lossy network. On voice a wattmeter shows a fraction of the peak.',
    above: 'Check probe setting, dummy load and direct power before believing it.',
  },
];
