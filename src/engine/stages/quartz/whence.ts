import type { Given, Way } from './derive.ts';
import type { Source } from './sources.ts';

const figures = [
  ['fs', 'fs'],
  ['lm', 'Lm'],
  ['rm', 'Rm'],
  ['c0', 'C0'],
] as const satisfies readonly (readonly [keyof Given, string])[];

const methods: Readonly<Record<string, string>> = {
  fixture: 'measured in a fixture',
  shift: 'measured by oscillator shift',
  pair: 'measured by the pair of resonances',
};

/** In words, where the figures of the crystal come from. */
export function whence(
  ways: Readonly<Record<keyof Given, Way>>,
  from: Readonly<Partial<Record<keyof Given, Source>>>,
  method: string,
): string {
  const groups = new Map<string, string[]>();
  for (const [key, name] of figures) {
    const source = placeOf(ways[key], from[key], method);
    groups.set(source, [...(groups.get(source) ?? []), name]);
  }
  const parts = [...groups].map(([source, names]) => `${list(names)} ${source}`);
  return `${parts.join('; ')}.`;
}

function placeOf(way: Way, from: Source | undefined, method: string): string {
  if (way === 'given') {
    if (from === 'measure') return methods[method] ?? 'measured';
    if (from === 'sweep') return 'from the fit of the sweep';
    if (from === 'bag') return 'from the medians of the bag';
    return 'as typed';
  }
  if (way === 'guess') return 'guessed';
  if (way === 'marking') return 'guessed from the marking';
  return 'worked from the others';
}

const list = (names: readonly string[]) =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
