import { act, cleanup, fireEvent, screen, waitFor } from '@testing-library/react';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { useHear } from '../../src/store/hear.ts';
import { NoSound, samplesOf, spoken } from '../../src/worksheets/hear/ownSound.ts';
import { Player } from '../../src/worksheets/hear/player.ts';
import { openSheet } from './sheet.tsx';

afterEach(() => {
  cleanup();
  useHear.setState(useHear.getInitialState(), true);
  vi.unstubAllGlobals();
});

const soon = { timeout: 20_000 };

describe('Hear it', () => {
  test('the sound is made by itself, and says which it is', async () => {
    const { container, user } = openSheet('hear');
    await screen.findByText(/^What is heard: A, the present filter/, {}, soon);
    await user.click(screen.getByRole('radio', { name: 'As spoken' }));
    expect(container.textContent).toMatch(/The voice as it is spoken/);
    expect(container.textContent).toMatch(/Spectrum of what is heard/);
  });

  test('the slider and the field are one figure, and a tone moves with it', async () => {
    const { container, field } = openSheet('hear');
    fireEvent.change(field('hear.offTune'), { target: { value: '-150' } });
    expect(container.querySelector('[id="hear.offTune:slide"]')?.getAttribute('value')).toBe('60');
    expect(container.textContent).toMatch(/comes out as850[.]0\sHz/);
  });

  test('too far off tune is refused in words, and stays', async () => {
    const { container, field } = openSheet('hear');
    fireEvent.change(field('hear.offTune'), { target: { value: '4k' } });
    expect(field('hear.offTune').value).toBe('4k');
    expect(container.textContent).toMatch(/−300\sHz/);
  });

  test('a file that is no sound, and a microphone that isn’t there, are said in words', async () => {
    await expect(samplesOf(new ArrayBuffer(4))).rejects.toThrow(NoSound);
    await expect(spoken(Promise.resolve())).rejects.toThrow(/microphone/);
    const { container, user } = openSheet('hear');
    await user.click(screen.getByRole('button', { name: /Speak for/ }));
    await waitFor(() => expect(container.textContent).toMatch(/no microphone to give/));
  });

  test('one’s own sound is heard instead, and put away again', async () => {
    const { container, user } = openSheet('hear');
    const samples = Float32Array.from({ length: 16_000 }, (_, i) => Math.sin(i / 4));
    act(() => useHear.getState().take({ name: 'a tone', samples }));
    expect(container.textContent).toMatch(/What is heard: a tone/);
    await user.click(screen.getByRole('button', { name: 'The voice by formula' }));
    expect(useHear.getState().own).toBeNull();
  });
});

describe('the player', () => {
  /** As much of a browser's audio as the player asks for. */
  class Clock {
    static latest: Clock;
    currentTime = 0;
    destination = {};
    begun: { when: number; at: number; gain: { value: number } }[] = [];
    constructor() {
      Clock.latest = this;
    }
    resume = async () => {};
    createBuffer = () => ({ copyToChannel: () => {} });
    createGain() {
      const gain = {
        value: 0,
        cancelScheduledValues: () => {},
        setTargetAtTime(value: number) {
          this.value = value;
        },
      };
      return { gain, connect: () => this.destination };
    }
    createBufferSource() {
      let to: { value: number } = { value: 0 };
      return {
        buffer: null,
        loop: false,
        connect(node: { gain: { value: number } }) {
          to = node.gain;
          return node;
        },
        start: (when: number, at: number) => this.begun.push({ when, at, gain: to }),
        stop: () => {},
      };
    }
  }

  const two = new Map([
    ['0', new Float32Array(32_000)],
    ['A', new Float32Array(32_000)],
  ]);

  test('all begin together, one is heard, and the change is at once', async () => {
    vi.stubGlobal('AudioContext', Clock);
    const player = new Player();
    player.choose('A');
    player.lay(two, 16_000);
    expect(player.position()).toBeNull();
    await player.play();
    const { begun } = Clock.latest;
    expect(new Set(begun.map(({ when }) => when)).size).toBe(1);
    expect(begun.map(({ gain }) => gain.value)).toEqual([0, 1]);
    player.choose('0');
    expect(begun.map(({ gain }) => gain.value)).toEqual([1, 0]);
    // Two seconds long: at 2.52 s by the clock it is half a second into the second round.
    Clock.latest.currentTime = 2.52;
    expect(player.position()).toBeCloseTo(0.5, 9);
    // Other sounds go on at the same place.
    player.lay(new Map(two), 16_000);
    expect(Clock.latest.begun.at(-1)?.at).toBeCloseTo(0.5, 9);
    player.stop();
    expect(player.position()).toBeNull();
  });
});
