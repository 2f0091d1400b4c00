import { heightAt } from '../../design/chart/thinned.ts';
import { format } from '../../engine/quantity/format.ts';
import type { Wave } from './twoPeriods.ts';
import type { Waves } from './useCycles.ts';

const STEP = 45;

/** Every 45° of one cycle in figures, by hand and from the model. */
export function cycleTable(hand: Waves, exact: Waves | null) {
  const said = (wave: Wave | undefined, at: number, unit: 'V' | 'A') =>
    wave === undefined ? '–' : format(heightAt(wave, at) ?? 0, unit, 2);
  return {
    columns: [
      { key: 'at', label: 'Cycle', unit: '°' },
      { key: 'v', label: 'Voltage by hand' },
      { key: 'exactV', label: 'from the model' },
      { key: 'i', label: 'Current by hand' },
      { key: 'exactI', label: 'from the model' },
    ],
    rows: Array.from({ length: 360 / STEP + 1 }, (_, i) => STEP * i).map((at) => ({
      key: String(at),
      cells: {
        at: String(at),
        v: said(hand.voltage, at, 'V'),
        exactV: said(exact?.voltage, at, 'V'),
        i: said(hand.current, at, 'A'),
        exactI: said(exact?.current, at, 'A'),
      },
    })),
  };
}
