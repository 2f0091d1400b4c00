import type { Filter } from './candidates.ts';

/** Cutoff over operating frequency. */
const flatRatios = [1.1, 1.15, 1.2, 1.3, 1.4] as const;
const rippledRatios = [1.05, 1.1, 1.15, 1.2, 1.3] as const;
const steepRatios = [1.05, 1.1, 1.2] as const;

/** dB */
const ripples = [0.01, 0.044, 0.1] as const;
const attenuations = [35, 45, 55] as const;

const trapWords = {
  second: 'trap on 2f',
  third: 'trap on 3f',
  both: 'traps on 2f and 3f',
} as const;

type Trap = keyof typeof trapWords;

/** Every filter that is looked through. */
export function filters(): Filter[] {
  return [...halfWaves(), ...flat(), ...rippled(), ...elliptic()];
}

function halfWaves(): Filter[] {
  const one = 'half-wave, one section';
  const two = 'half-wave, two sections';
  return [
    half('halfWave', one),
    half('halfWave', one, 'second'),
    half('doubleHalfWave', two),
    half('doubleHalfWave', two, 'second'),
    half('doubleHalfWave', two, 'both'),
  ];
}

function half(lowpass: 'halfWave' | 'doubleHalfWave', words: string, trap?: Trap): Filter {
  return {
    choice: { lowpass, traps: trap ?? 'none' },
    family: trap ? 'traps' : 'halfWave',
    kind: `${lowpass} ${trap ?? ''}`,
    words: trap ? `${words}, ${trapWords[trap]}` : words,
    behindPi: true,
  };
}

function flat(): Filter[] {
  return orders(3, 9).flatMap((order) =>
    flatRatios.map((cutoffRatio) => ({
      choice: { lowpass: 'butterworth', order, cutoffRatio, traps: 'none' },
      family: 'prototypes',
      kind: `butterworth ${order}`,
      words: `Butterworth of ${order}, cutoff at ${cutoffRatio} f`,
      behindPi: false,
    })),
  );
}

function rippled(): Filter[] {
  return orders(3, 9).flatMap((order) =>
    ripples.flatMap((ripple) =>
      rippledRatios.flatMap((cutoffRatio): Filter[] => {
        const usual = ripple === 0.044 && (cutoffRatio === 1.1 || cutoffRatio === 1.2);
        const filter = (trap?: Trap): Filter => ({
          choice: { lowpass: 'chebyshev', order, ripple, cutoffRatio, traps: trap ?? 'none' },
          family: trap ? 'traps' : 'prototypes',
          kind: `chebyshev ${order} ${trap ?? ''}`,
          words: `Chebyshev of ${order}, ${ripple} dB, cutoff at ${cutoffRatio} f${trap ? `, ${trapWords[trap]}` : ''}`,
          behindPi: usual && order <= 7,
        });
        // With a trap fewer elements will do: short filters, and not every cutoff.
        const trapped = order <= 7 && order % 2 === 1 && ripple > 0.02 && cutoffRatio !== 1.15;
        const traps: Trap[] = order === 3 ? ['second'] : ['second', 'both'];
        return [filter(), ...(trapped ? traps.map(filter) : [])];
      }),
    ),
  );
}

function elliptic(): Filter[] {
  return [3, 5, 7].flatMap((order) =>
    ripples.flatMap((ripple) =>
      steepRatios.flatMap((cutoffRatio) => {
        const common = { lowpass: 'elliptic', order, ripple, cutoffRatio } as const;
        const words = `elliptic of ${order}, ${ripple} dB, cutoff at ${cutoffRatio} f`;
        const usual = ripple === 0.044 && cutoffRatio !== 1.05 && order <= 5;
        return [
          {
            choice: { ...common, stopBy: 'notch' },
            family: 'elliptic',
            kind: `elliptic ${order}`,
            words: `${words}, first notch on 2f`,
            behindPi: usual,
          },
          ...attenuations.map((stopWanted) => ({
            choice: { ...common, stopBy: 'attenuation', stopWanted } as const,
            family: 'elliptic' as const,
            kind: `elliptic ${order}`,
            words: `${words}, ${stopWanted} dB of stop band`,
            behindPi: false,
          })),
        ] satisfies Filter[];
      }),
    ),
  );
}

const orders = (from: number, to: number): number[] =>
  Array.from({ length: to - from + 1 }, (_, i) => from + i);
