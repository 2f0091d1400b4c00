import { bracketedRoot } from '../bracketedRoot.ts';
import { type BalanceBench, operatingPoint } from './harmonicBalance.ts';
import { blankSurroundings, type PowerCircuit, powerSurroundings } from './powerCircuit.ts';

/** Highest bias that is tried, V: no trimmer at a base gives more. */
const HIGHEST = 5;

/**
 * Open voltage of the bias at which a stage without drive draws a certain collector current.
 *
 * @param circuit its own bias voltage is not looked at
 * @param standing collector current without drive, A, 0 or more
 * @return V; null where no bias up to 5 V lets so much flow
 */
export function biasFor(
  bench: BalanceBench,
  circuit: PowerCircuit,
  standing: number,
): number | null {
  if (standing <= 0) return 0;
  const room = blankSurroundings(0);
  const beyond = (voltage: number) => {
    const bias = { ...circuit.bias, voltage };
    const around = powerSurroundings({ ...circuit, bias }, 0, room);
    operatingPoint(bench, circuit.model, around);
    return -(bench.rest.current[1] ?? 0) - standing;
  };
  if (beyond(0) > 0) return 0;
  if (beyond(HIGHEST) < 0) return null;
  return bracketedRoot(beyond, 0, HIGHEST, 1e-9);
}
