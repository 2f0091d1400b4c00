import { coupledGain, coupledLadder } from '../../circuit/coupledCircuits.ts';
import type { Outcome } from '../../fields/kinds.ts';
import { noResults, type Problem, type Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { designFront, type FrontMade } from './design.ts';
import { frontFields } from './fields.ts';
import type { FrontSeen } from './seen.ts';

/** Points of the curve. */
const POINTS = 241;

/** Reactance of the coil where none is typed, Ω; width over operating frequency. */
export const USUAL = { reactance: 120, width: 0.04 } as const;

/** The band-pass as built, and what it leaves of the mixer's other products. */
export function workFront(seen: FrontSeen): Work<typeof frontFields> {
  const { scheme, nominal, carrier, oscillator, image, halfway } = seen;
  if (
    scheme !== 'conversion' ||
    nominal === null ||
    carrier === null ||
    oscillator === null ||
    image === null ||
    halfway === null
  ) {
    return { results: noResults(frontFields), problems: [] };
  }
  const width = seen.widthGiven ?? USUAL.width * nominal;
  const coil = seen.coilGiven ?? USUAL.reactance / (2 * Math.PI * nominal);
  const circuits = seen.circuits === 3 ? 3 : 2;
  const made = designFront({ ...seen, nominal, circuits, width, coil });
  if ('refusal' in made) {
    return { results: noResults(frontFields), problems: [refused(seen, made, width)] };
  }
  const { network, loadedQ, coupleExact, feedExact } = made;
  const ladder = coupledLadder(network);
  const best = coupledGain(ladder, nominal);
  const taken = (f: number): number => best - coupledGain(ladder, f);
  const leftovers = [
    leftover('Image', image, 0, taken, seen.wanted),
    leftover('Conversion oscillator', oscillator, seen.oscillatorLeft ?? 0, taken, seen.wanted),
    leftover(
      'Its second harmonic',
      2 * oscillator,
      (seen.oscillatorLeft ?? 0) - SECOND,
      taken,
      seen.wanted,
    ),
    leftover('Intermediate frequency', carrier, seen.carrierLeft ?? 0, taken, seen.wanted),
  ];
  return {
    results: {
      width,
      coil,
      loadedQ,
      coupleExact,
      couple: network.couple,
      feedExact,
      feed: network.feed,
      endC: network.endC,
      middleC: circuits === 3 ? network.middleC : null,
      loss: -best,
      response: responseOf(network.nominal, (f) => -taken(f)),
      leftovers,
      imageRejection: taken(image),
      halfwayRejection: taken(halfway),
      network,
    },
    problems: problems(seen, { loss: -best, leftovers }),
    origins: {
      width: seen.widthGiven === null ? 'typical' : 'typed',
      coil: seen.coilGiven === null ? 'typical' : 'typed',
    },
  };
}

/** Second harmonic of an oscillator of a few milliwatts against its fundamental, dB. */
export const SECOND = 20;

/** Short of what is wanted by no more than this is close, dB. */
const CLOSE = 6;

function leftover(
  what: string,
  frequency: number,
  before: number,
  taken: (f: number) => number,
  wanted: number,
) {
  const off = taken(frequency);
  const left = before - off;
  const outcome: Outcome = -left >= wanted ? 'holds' : -left >= wanted - CLOSE ? 'close' : 'fails';
  return { what, frequency, before, taken: off, left, outcome };
}

function responseOf(nominal: number, level: (f: number) => number) {
  const frequency = new Float64Array(POINTS);
  const out = new Float64Array(POINTS);
  // Close together near the passband, wide apart far from it: a ninth power of the way.
  for (let i = 0; i < POINTS; i += 1) {
    const way = (2 * i) / (POINTS - 1) - 1;
    frequency[i] = nominal * 4 ** (0.25 * way + 0.75 * way ** 3);
    out[i] = level(frequency[i] ?? nominal);
  }
  return { frequency, level: out };
}

function refused(seen: FrontSeen, made: FrontMade, width: number): Problem {
  if ('refusal' in made && made.refusal === 'lossy') {
    return {
      field: 'front.widthGiven',
      weight: 'stops',
      says: `Coils of Q ${format(seen.coilQ, '1', 2)} can’t make a band-pass of ${format(width, 'Hz', 3)}: all the power would stay in them.`,
      try: `At least ${format(made.least, 'Hz', 2)}, or better coils.`,
    };
  }
  return {
    field: 'front.coilGiven',
    weight: 'stops',
    says: `With this coil and ${format(seen.end, 'Ω', 3)} at the ends the couplings need more capacitance than the circuits have.`,
    try: 'A narrower band-pass, or a coil of more reactance.',
  };
}

function problems(
  seen: FrontSeen,
  found: { readonly loss: number; readonly leftovers: readonly ReturnType<typeof leftover>[] },
): Problem[] {
  const out: Problem[] = [];
  for (const { what, left, outcome, frequency } of found.leftovers) {
    if (outcome === 'holds') continue;
    out.push({
      field: what === 'Image' ? 'front.circuits' : 'convert.oscillatorIsolation',
      weight: 'warns',
      says: `${what} at ${format(frequency, 'Hz', 4)} is left only ${format(-left, 'dB', 1)} below the signal; ${format(seen.wanted, 'dB', 1)} is wanted.`,
      try:
        what === 'Image'
          ? 'Three circuits, a narrower band-pass, or an intermediate frequency further away.'
          : 'Better balance of the mixer, three circuits, or a narrower band-pass.',
    });
  }
  if (found.loss > 6) {
    out.push({
      field: 'front.coilQ',
      weight: 'warns',
      says: `The band-pass loses ${format(found.loss, 'dB', 1)}.`,
      try: 'Better coils or a wider band-pass: 2 to 4 dB is usual.',
    });
  }
  return out;
}
