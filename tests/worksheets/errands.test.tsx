import { act, renderHook, waitFor } from '@testing-library/react';
import { beforeEach, describe, expect, test } from 'vitest';
import type { Runner, Told } from '../../src/engine/errands/runner.ts';
import { runErrandsWith, useErrand } from '../../src/store/errands.ts';
import { useBench } from '../../src/store/store.ts';

/** A runner whose errands come back when the test says so. */
let sent: { seen: unknown; told: Told; called: boolean }[] = [];
const byHand: Runner = (_, seen, told) => {
  const one = { seen, told, called: false };
  sent.push(one);
  return () => {
    one.called = true;
  };
};

beforeEach(() => {
  useBench.setState(useBench.getInitialState(), true);
  sent = [];
  runErrandsWith(byHand);
});

const say = (path: string, text: string) => act(() => useBench.getState().say(path, path, text));

describe('an errand as its sheet sees it', () => {
  test('is sent for, comes back, is from before once the rig has changed', async () => {
    const { result } = renderHook(() => useErrand<string>('yield'));
    act(() => result.current.run());
    expect(result.current.standing).toBe('running');
    act(() => sent[0]?.told.progress(0.4));
    expect(result.current.progress).toBe(0.4);
    act(() => sent[0]?.told.answer('first'));
    expect(result.current).toMatchObject({ standing: 'fresh', answer: 'first' });
    say('filter.bandwidth', '2200');
    expect(result.current).toMatchObject({ standing: 'before', answer: 'first' });
    act(() => useBench.getState().undo());
    expect(result.current.standing).toBe('fresh');
  });

  test('an answer that comes too late is dropped', () => {
    const { result } = renderHook(() => useErrand<string>('yield'));
    say('yield.seed', '7');
    act(() => result.current.run());
    say('yield.seed', '8');
    act(() => result.current.run());
    expect(sent[0]?.called).toBe(true);
    act(() => sent[0]?.told.answer('stale'));
    expect(result.current.answer).not.toBe('stale');
    act(() => sent[1]?.told.answer('new'));
    expect(result.current).toMatchObject({ standing: 'fresh', answer: 'new' });
  });

  test('stopped or failed, it is not sent for again by itself', async () => {
    const { result } = renderHook(() => useErrand<string>('yield', { auto: 1 }));
    say('yield.seed', '9');
    await waitFor(() => expect(sent).toHaveLength(1));
    act(() => result.current.cancel());
    expect(sent[0]?.called).toBe(true);
    await new Promise((go) => setTimeout(go, 20));
    expect(sent).toHaveLength(1);
    say('yield.seed', '10');
    await waitFor(() => expect(sent).toHaveLength(2));
    act(() => sent[1]?.told.failed('no luck'));
    expect(result.current.failed).toBe('no luck');
    await new Promise((go) => setTimeout(go, 20));
    expect(sent).toHaveLength(2);
  });

  test('waits while something that it needs is wrong', () => {
    const { result } = renderHook(() => useErrand<string>('yield'));
    say('yield.builds', 'many');
    expect(result.current.standing).toBe('waits');
    act(() => result.current.run());
    expect(sent).toHaveLength(0);
  });
});
