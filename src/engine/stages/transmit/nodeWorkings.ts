import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { Unit } from '../../quantity/units.ts';
import type { transmitFields } from './fields.ts';
import { nodeFormula } from './nodeFormula.ts';
import { nodeWord } from './nodeRows.ts';
import { frequencyOf } from './portSteps.ts';
import type { SolvedDrive } from './smallFields.ts';

const source =
  'nodal analysis: Kirchhoff’s current law at the node (Ho, Ruehli & Brennan, IEEE Trans. CAS-22, 1975, 504)';

type NodeKey = Extract<keyof StageWorkings<typeof transmitFields>, `nodes.${string}`>;

/** Each node's equation with the neighbours' voltages put in. */
export const nodeWorkings: Pick<StageWorkings<typeof transmitFields>, NodeKey> = {
  'nodes.circuit': listed('The small stages in the signal’s order, driven from either end.'),
  'nodes.node': listed('All nodes of the circuit but ground, the supply being ground for signals.'),
  'nodes.re': (look, index) => nodeWorking(look, index, true),
  'nodes.im': (look, index) => nodeWorking(look, index, false),
};

function listed(says: string): Working {
  return { says, rule: 'A fixed list.', where: {}, source: 'definition' };
}

function nodeWorking(look: Look, index: number, real: boolean): Working {
  const { drive, at } = nodeAt(look, index);
  const { g, b, a, d, parts, neighbours } = nodeFormula(
    drive.net,
    at,
    drive.driven === 0 ? 'R_s' : 'R_L',
  );
  const where: Record<string, Bound> = {
    U_1: { value: 1, unit: 'V', says: 'behind the resistance that drives' },
    ...frequencyOf(drive.name),
    omega: { formula: '2 * pi * f_0', unit: 'Hz', says: 'angular frequency' },
    ...partsBound(drive, parts),
  };
  for (const name of neighbours) {
    const node = drive.net.nodeNames.indexOf(name) - 1;
    const says = `${nodeWord(name)}, from this table`;
    where[`x_${name}`] = { value: drive.re[node] ?? 0, unit: 'V', says: `in phase at the ${says}` };
    where[`y_${name}`] = {
      value: drive.im[node] ?? 0,
      unit: 'V',
      says: `in quadrature at the ${says}`,
    };
  }
  const none = '0 * U_1 / R_0';
  if (b === '' || d === '' || g === '') {
    where.R_0 = { value: 1, unit: 'Ω', says: 'unit of what is nothing' };
  }
  where.G_n = { formula: g || 'none', unit: 'S', says: 'conductances that meet here' };
  if (g === '') where.G_n = { formula: '0 / R_0', unit: 'S', says: 'no conductance meets here' };
  where.B_n = { formula: b || '0 / R_0', unit: 'S', says: 'susceptances that meet here' };
  where.A_n = { formula: a || none, unit: 'A', says: 'what the neighbours send, in phase' };
  where.D_n = { formula: d || none, unit: 'A', says: 'what the neighbours send, in quadrature' };
  return {
    says: 'What flows in from the neighbours, over all that leads away: the currents at the node add up to nothing.',
    formula: real
      ? '(G_n * A_n + B_n * D_n) / (G_n^2 + B_n^2)'
      : '(G_n * D_n - B_n * A_n) / (G_n^2 + B_n^2)',
    where,
    source,
    assumes:
      'All nodes are solved at once; each equation is shown with the others’ voltages put in.',
  };
}

/** Which circuit and which of its nodes a row of the table is. */
function nodeAt(look: Look, index: number): { drive: SolvedDrive; at: number } {
  let left = index;
  const drives = look('transmit.circuits') as readonly SolvedDrive[];
  for (const drive of drives) {
    if (left < drive.re.length) return { drive, at: left + 1 };
    left -= drive.re.length;
  }
  throw new Error(`no node ${index}`);
}

/** What is at the ends of each circuit. */
const ends: Readonly<Record<string, readonly [string, string]>> = {
  mic: ['transmit.micSource', 'transmit.followerInput'],
  follower: ['transmit.followerSource', 'transmit.modulatorImpedance'],
  first: ['transmit.modulatorImpedance', 'transmit.amplifierLoad'],
  second: ['transmit.amplifierInput', 'transmit.amplifierLoad'],
  third: ['transmit.thirdInput', 'transmit.amplifierLoad'],
  driver: ['transmit.driverSource', 'transmit.finalInput'],
};

/** Parts by symbol: entries of the sheet, or figures of the table of models. */
function partsBound({ name, net }: SolvedDrive, parts: readonly string[]): Record<string, Bound> {
  const stage = ['first', 'second', 'third'].includes(name) ? 'amplifier' : name;
  const [source, load] = ends[name] ?? ['', ''];
  const paths: Readonly<Record<string, string>> = {
    R_s: source,
    R_L: load,
    R_U: `transmit.${stage}Upper`,
    R_D: `transmit.${stage}Lower`,
    R_E: `transmit.${stage}Emitter`,
    R_B: `transmit.${stage}Bridged`,
    C_B: `transmit.${stage}Bridge`,
    R_F: `transmit.${stage}Feedback`,
    C_F: `transmit.${stage}Coupling`,
    C_K: `transmit.${stage}Coupling`,
    C_O: `transmit.${stage}Coupling`,
    R_C: `transmit.${stage}Feed`,
    L_C: 'transmit.amplifierChoke',
    L_P: 'transmit.driverWinding',
    sigma: 'transmit.driverLeakage',
    R_core: 'transmit.driverCore',
  };
  const where: Record<string, Bound> = {};
  for (const part of parts) {
    if (part === 'n_P') {
      where.R_Ld = 'transmit.driverLoad';
      where.R_base = 'transmit.finalInput';
      where.n_P = {
        formula: 'sqrt(R_Ld / R_base)',
        unit: '1',
        says: 'turns ratio of the transformer',
      };
      continue;
    }
    const path = paths[part];
    if (path !== undefined) {
      where[part] = path;
      continue;
    }
    const value = net.value[net.partNames.indexOf(part)] ?? 0;
    where[part] = { value, unit: unitOf(part), says: saysOf(part) };
  }
  return where;
}

const unitOf = (part: string): Unit =>
  part.startsWith('C_') ? 'F' : part.startsWith('g_') ? 'S' : 'Ω';

/** Elements of the transistor's model, which its own table works out. */
function saysOf(part: string): string {
  const twin = part.endsWith('2') ? ' of the sleeping transistor' : '';
  const words: Readonly<Record<string, string>> = {
    r_b: 'resistance of the base',
    r_pi: 'base–emitter resistance',
    C_pi: 'base–emitter capacitance',
    C_mu: 'collector–base capacitance',
    r_o: 'output resistance',
    g_m: 'slope',
    C_ec: 'narrowing of the base',
  };
  return `${words[twin ? part.slice(0, -1) : part] ?? part}${twin}, from the table of models`;
}
