import type { RowOf } from '../../fields/kinds.ts';
import type { SolvedDrive, smallResults } from './smallFields.ts';

type Row = RowOf<typeof smallResults.nodes.columns>;

/** What the nodes' short names stand for. */
export const nodeWords: Readonly<Record<string, string>> = {
  in: 'input',
  out: 'output',
  b: 'base',
  n: 'inner base',
  c: 'collector',
  e: 'emitter',
  f: 'foot of the first emitter resistor',
  j: 'joint of feedback resistor and capacitor',
  d: 'joint of collector resistor and choke',
};

const circuits: Readonly<Record<string, string>> = {
  mic: 'Microphone amplifier',
  follower: 'Follower',
  first: 'First amplifier',
  second: 'Second amplifier',
  third: 'Third amplifier',
  driver: 'Driver',
};

/** Every node of every solved circuit, one after the other. */
export const nodeRows = (drives: readonly SolvedDrive[]): Row[] =>
  drives.flatMap(({ name, driven, net, re, im }) =>
    Array.from(re, (x, i) => ({
      circuit: `${circuits[name] ?? name}, ${driven === 0 ? 'driven at its input' : 'driven at its output'}`,
      node: nodeWord(net.nodeNames[i + 1] ?? ''),
      re: x,
      im: im[i] ?? 0,
    })),
  );

/** A node in words: `b2` is the sleeping half's base. */
export function nodeWord(name: string): string {
  const twin = name.endsWith('2');
  const word = nodeWords[twin ? name.slice(0, -1) : name] ?? name;
  return twin ? `${word}, sleeping half` : word;
}
