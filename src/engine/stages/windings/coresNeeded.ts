import { count, table, words } from '../../fields/declare.ts';
import type { WindingsSeen } from './seen.ts';

/** Cores of the whole rig against the box. */
export const coresNeeded = table({
  label: 'Cores that the rig takes',
  help: 'Coils, transformers and chokes together, each kind once.',
  columns: {
    core: words({ label: 'Core', help: 'By its name.' }),
    goes: words({ label: 'For', help: 'What is wound on it.' }),
    needed: count({ label: 'Needed', help: 'Pieces; a stack of two counts twice.' }),
    boxed: count({ label: 'In the box', help: 'Pieces by the list above.' }),
    toGet: count({ label: 'To get', help: 'What is missing.' }),
  },
});

/** A winding on a core. */
interface OnCore {
  readonly label: string;
  readonly core: string;
}

/** How many of each core the windings of the rig take, and how many the box holds. */
export function neededRows(windings: readonly OnCore[], listed: WindingsSeen['listed']) {
  const kinds = new Map<string, { needed: number; goes: string[] }>();
  for (const { label, core } of windings) {
    const stack = /^two (.+) stacked$/.exec(core);
    const title = stack?.[1] ?? core;
    const kind = kinds.get(title) ?? { needed: 0, goes: [] };
    kind.needed += stack ? 2 : 1;
    kind.goes.push(label);
    kinds.set(title, kind);
  }
  return [...kinds].map(([core, { needed, goes }]) => {
    const boxed = (listed ?? [])
      .filter(({ title }) => title === core)
      .reduce((sum, { pieces }) => sum + (pieces ?? 0), 0);
    return { core, goes: goes.join(', '), needed, boxed, toGet: Math.max(0, needed - boxed) };
  });
}
