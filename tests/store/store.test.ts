import { beforeEach, describe, expect, test } from 'vitest';
import { emptyRig } from '../../src/engine/rig/document.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { writeRigFile } from '../../src/engine/rig/file.ts';
import { movedBetween, workedOf } from '../../src/store/bench.ts';
import { loadExpressions } from '../../src/store/expressions.ts';
import { keepRig } from '../../src/store/keep.ts';
import { firstRig, useBench } from '../../src/store/store.ts';

/** A storage that keeps things in a map, and can be told to be full. */
class MapStorage implements Storage {
  readonly map = new Map<string, string>();
  full = false;
  get length(): number {
    return this.map.size;
  }
  clear(): void {
    this.map.clear();
  }
  getItem(key: string): string | null {
    return this.map.get(key) ?? null;
  }
  key(index: number): string | null {
    return [...this.map.keys()][index] ?? null;
  }
  removeItem(key: string): void {
    this.map.delete(key);
  }
  setItem(key: string, value: string): void {
    if (this.full) throw new Error('no room');
    this.map.set(key, value);
  }
}

const initial = useBench.getInitialState();
const KEY = 'monoband-bench.rig';

beforeEach(() => useBench.setState(initial, true));

const state = () => useBench.getState();
const value = (path: string) => workedOf(state().rig).inputs[path]?.value;

describe('the store', () => {
  test('a change reaches the worked rig and is shown as moved', () => {
    state().openRig(examples[0] ?? emptyRig(), 'Open');
    state().say('plan.pep', 'Power wanted', '4');
    expect(value('plan.pep')).toBe(4);
    const moves = movedBetween(state().before, state().rig);
    expect(moves.map((m) => m.path)).toContain('plan.pepLevel');
  });

  test('letters typed one after the other are one step back', () => {
    const start = state().rig;
    for (const text of ['1', '1.', '1.5']) state().say('plan.pep', 'Power wanted', text);
    state().undo();
    expect(state().rig).toBe(start);
    state().redo();
    expect(value('plan.pep')).toBe(1.5);
  });

  test('changes of different fields are steps of their own', () => {
    state().say('plan.pep', 'Power wanted', '3');
    state().say('plan.supply', 'Supply', '13.8');
    state().undo();
    expect(value('plan.supply')).toBe(12);
    expect(value('plan.pep')).toBe(3);
  });

  test('N2 what was typed stays, however wrong', () => {
    state().say('plan.pep', 'Power wanted', '2 bananas');
    const input = workedOf(state().rig).inputs['plan.pep'];
    expect(input).toMatchObject({ text: '2 bananas', value: null, wrong: true });
    state().say('plan.pep', 'Power wanted', '5000');
    expect(workedOf(state().rig).inputs['plan.pep']?.problem?.says).toMatch(/10\smW.*100\sW/);
  });

  test('a broken file changes nothing and gives reasons', () => {
    const before = state().rig;
    state().openText('{"format":"else"}', 'x.json');
    expect(state().rig).toBe(before);
    expect(state().notice?.weight).toBe('bad');
    expect(state().notice?.reasons?.length).toBeGreaterThan(0);
  });

  test('whole expressions are read once their reader is there', async () => {
    state().say('quartz.c0Given', 'Holder capacitance', '2*2p');
    await loadExpressions();
    expect(workedOf(state().rig).inputs['quartz.c0Given']?.value).toBeCloseTo(4e-12, 20);
  });
});

describe('keeping', () => {
  test('a rig survives a reload', () => {
    const storage = new MapStorage();
    const write = keepRig(storage);
    state().say('plan.pep', 'Power wanted', '4u7');
    write();
    useBench.setState(initial, true);
    keepRig(storage);
    expect(state().rig.entries['plan.pep']?.text).toBe('4u7');
  });

  test('S3 what cannot be read is put aside, said, and never overwritten', () => {
    const storage = new MapStorage();
    storage.map.set(KEY, '{"format":"monoband-bench.rig","version":99}');
    const write = keepRig(storage);
    expect(state().notice?.weight).toBe('bad');
    state().say('plan.pep', 'Power wanted', '3');
    write();
    expect([...storage.map.values()]).toContain('{"format":"monoband-bench.rig","version":99}');
  });

  test('S3 where it cannot even be put aside, nothing is written over it', () => {
    const storage = new MapStorage();
    storage.map.set(KEY, 'damaged');
    storage.full = true;
    const write = keepRig(storage);
    storage.full = false;
    state().say('plan.pep', 'Power wanted', '3');
    write();
    expect(storage.map.get(KEY)).toBe('damaged');
  });

  test('a full storage is said', () => {
    const storage = new MapStorage();
    const write = keepRig(storage);
    storage.full = true;
    state().say('plan.pep', 'Power wanted', '3');
    write();
    expect(state().notice?.says).toMatch(/no room/);
  });

  test('no storage is said', () => {
    keepRig(null);
    expect(state().notice?.weight).toBe('bad');
  });

  test('the first visit opens the forty-metre example', () => {
    keepRig(new MapStorage());
    expect(state().rig).toBe(firstRig);
    expect(writeRigFile(firstRig)).toContain('7.2M');
  });
});
