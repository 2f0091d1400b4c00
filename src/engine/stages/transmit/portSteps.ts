import type { Bound, Look } from '../../fields/workings.ts';
import type { Unit } from '../../quantity/units.ts';
import { SPEECH } from './smallCircuits.ts';
import type { SolvedDrive } from './smallFields.ts';

export type CircuitName = 'mic' | 'follower' | 'first' | 'second' | 'third' | 'driver';

/** The frequency that a circuit is solved at. */
export const frequencyOf = (circuit: string): Record<string, Bound> => ({
  f_0:
    circuit === 'mic' || circuit === 'follower'
      ? { value: SPEECH, unit: 'Hz', says: 'the middle of speech' }
      : circuit === 'first' || circuit === 'second'
        ? 'plan.filterFrequency'
        : 'plan.nominal',
});

/** Node voltages of a solved circuit as symbols: `x_in`, `y_in`, `x_out` …, with 1 V behind an end. */
export function portSteps(
  look: Look,
  name: CircuitName,
  driven: 0 | 1,
  nodes: readonly ('in' | 'out' | 'n' | 'c' | 'e')[],
  mark = '',
): Record<string, Bound> {
  const drives = (look('transmit.circuits') as readonly SolvedDrive[] | null) ?? [];
  const drive = drives.find((one) => one.name === name && one.driven === driven);
  const where: Record<string, Bound> = {
    U_1: { value: 1, unit: 'V', says: 'behind the resistance that drives' },
  };
  if (!drive) return where;
  const [input, output] = drive.ports;
  const { inner, collector, emitter } = drive.device;
  const numbers = { in: input, out: output, n: inner, c: collector, e: emitter };
  const words = { in: 'input', out: 'output', n: 'inner base', c: 'collector', e: 'emitter' };
  const side = driven === 0 ? 'driven at the input' : 'driven at the output';
  for (const node of nodes) {
    const at = numbers[node];
    const says = `${words[node]}, ${side}: from the node voltages`;
    where[`x_${node}${mark}`] = volts(at === 0 ? 0 : (drive.re[at - 1] ?? 0), `in phase, ${says}`);
    where[`y_${node}${mark}`] = volts(
      at === 0 ? 0 : (drive.im[at - 1] ?? 0),
      `in quadrature, ${says}`,
    );
  }
  return where;
}

const volts = (value: number, says: string) => ({ value, unit: 'V' as Unit, says });
