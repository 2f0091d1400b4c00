import { describe, expect, test } from 'vitest';
import { noiseFromOutside } from '../../../src/engine/data/noiseClasses.ts';
import { workPath } from '../../../src/engine/stages/path/work.ts';
import { linkSeen as base } from './linkSeen.ts';

const within = (value: number | null, wanted: number, by: number) => {
  expect(value).not.toBeNull();
  expect(Math.abs((value ?? Number.NaN) - wanted)).toBeLessThanOrEqual(by);
};

describe('who hears whom', () => {
  // The way is the same both ways (reciprocity, closed form): all alike, nobody hears better.
  test('the same power and place at both ends', () => {
    const { results } = workPath({ ...base, farPower: 5 });
    within(results.heardReceived, results.received ?? Number.NaN, 1e-9);
    within(results.balance, 0, 1e-9);
    expect(results.balanceWords).toBe('Both hear one another about alike.');
  });

  // 100 W over 5 W: 10 lg 20 = 13.01 dB
  test('more power there is heard here', () => {
    const { results } = workPath(base);
    within(results.balance, -13.0103, 1e-4);
    expect(results.balanceWords).toContain('heard here 13');
  });

  // ITU-R P.372, table of c and d (second-hand): 72.5 − 67.2 = 5.3 dB between residential and
  // rural at any frequency, their d being the same. Far over the receiver's floor all of it counts:
  // −91 − 5.3 = −96.3 dBm; with −125 dBm of the floor: 10 lg(1 + 10^−2.87) = 0.0059 dB more.
  test('a quieter place there hears better by what its noise is less', () => {
    const { results } = workPath({ ...base, farPlace: 'rural' });
    within(results.farExternal, 48.92 - 5.3, 0.01);
    within(results.noise, -96.3 + 0.0059, 0.01);
    within(results.heardNoise, -90.9983, 1e-3);
  });

  // The line takes signal and band noise alike: only the receiver's own noise makes a difference.
  test('the line at the listening end costs nothing where the band sets the noise', () => {
    const long = workPath({ ...base, farFeedLoss: 6 });
    const short = workPath(base);
    within(short.results.snr, (long.results.snr ?? Number.NaN) + 0.005, 0.005);
    within(short.results.received, (long.results.received ?? Number.NaN) + 6, 1e-9);
    // and it costs all of it in the other direction
    within(short.results.heardReceived, (long.results.heardReceived ?? Number.NaN) + 6, 1e-9);
  });

  test('each sum ends at the level and the ratio that the sheet shows', () => {
    for (const route of ['skyWave', 'lineOfSight', 'twoRay', 'groundWave'] as const) {
      const { results } = workPath({ ...base, route, distance: 20e3, foF2: 9e6, feedLoss: 1.5 });
      const last = (rows: typeof results.sum) => rows?.at(-3)?.level ?? null;
      within(last(results.sum), results.received ?? Number.NaN, 1e-9);
      within(last(results.back), results.heardReceived ?? Number.NaN, 1e-9);
      within(results.sum?.at(-1)?.adds ?? null, results.snr ?? Number.NaN, 1e-9);
      within(results.back?.at(-1)?.adds ?? null, results.heardSnr ?? Number.NaN, 1e-9);
    }
  });

  test('noise at both ends is known even where nothing arrives', () => {
    const { results } = workPath({ ...base, route: 'skyWave', distance: 400e3, foF2: 3e6 });
    expect(results.received).toBeNull();
    within(results.noise, -90.9983, 1e-4);
    within(results.heardNoise, -90.9983, 1e-4);
  });
});

describe('thunderstorm noise', () => {
  // Powers of independent noises add: two alike are 3.01 dB more, one 10 dB less adds 0.414 dB
  // (closed form; the rule is that of ITU-R P.372).
  test('adds as a power', () => {
    const made = noiseFromOutside('residential', null, 7.1e6);
    within(made, 48.92, 0.01);
    within(noiseFromOutside('residential', made, 7.1e6), made + 3.0103, 1e-4);
    within(noiseFromOutside('residential', made - 10, 7.1e6), made + 0.4139, 1e-4);
  });

  test('typed for there, it raises the noise there and not here', () => {
    const made = noiseFromOutside('residential', null, 7.1e6);
    const { results } = workPath({ ...base, external: made, farAtmospheric: made });
    within(results.farExternal, made + 3.0103, 1e-4);
    within(results.farBand, -91 + 3.0103, 1e-4);
    within(results.heardNoise, -90.9983, 1e-4);
  });

  test('typed for here alone, it holds at another place there, too', () => {
    const storms = 60;
    const external = noiseFromOutside('residential', storms, 7.1e6);
    const { results } = workPath({ ...base, external, atmospheric: storms, farPlace: 'rural' });
    within(results.farExternal, noiseFromOutside('rural', storms, 7.1e6), 1e-9);
  });
});
