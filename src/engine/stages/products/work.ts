import { coupledGain, coupledLadder } from '../../circuit/coupledCircuits.ts';
import { mixed, wayOf } from '../../circuit/mixing.ts';
import type { Outcome } from '../../fields/kinds.ts';
import { rememberBut } from '../../fields/remember.ts';
import { noResults, type Problem, type Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import {
  type Around,
  alternatives,
  isFilter,
  isWanted,
  lowestWithin,
  type Tried,
} from './alternatives.ts';
import { productsFields } from './fields.ts';
import { nameOf, nearestMeeting, productsUpTo, type Tuning } from './products.ts';
import type { ProductsSeen } from './seen.ts';
import { strengthOf } from './strength.ts';

/** Rows shown of what is sent. */
const SENT = 10;

/** Nothing weaker than this is worth a row, dB. */
const FAINT = -100;

/** Short of what is wanted by no more than this is close, dB. */
const CLOSE = 6;

/** Other crystals hang on the plan and the band-pass alone: most changes leave them as they are. */
const choicesFor = rememberBut<Around, never, readonly Tried[]>([], alternatives);

/** What the two oscillators make besides what is wanted. */
export function workProducts(seen: ProductsSeen): Work<typeof productsFields> {
  const { scheme, nominal, filterFrequency, carrier, oscillator, lands, width, network } = seen;
  if (
    scheme !== 'conversion' ||
    nominal === null ||
    filterFrequency === null ||
    carrier === null ||
    oscillator === null ||
    lands === null ||
    width === null ||
    network === null
  ) {
    return { results: noResults(productsFields), problems: [] };
  }
  const products = productsUpTo(seen.most);
  const way = wayOf(seen.side, nominal, filterFrequency);
  const to = way === 'takes' ? oscillator - seen.span : oscillator + seen.span;
  const onSignal: Tuning = {
    from: oscillator,
    to,
    other: carrier,
    metFrom: lands,
    metTo: mixed(way, to, carrier),
  };
  const onFilter: Tuning = { ...onSignal, metFrom: carrier, metTo: carrier };
  const ladder = coupledLadder(network);
  const best = coupledGain(ladder, nominal);
  const strength = {
    ...seen,
    carrierLeft: seen.carrierLeft ?? 0,
    oscillatorLeft: seen.oscillatorLeft ?? 0,
  };

  const sent = products
    .filter((product) => !isWanted(product))
    .flatMap((product) => {
      const before = strengthOf(product, strength);
      // The band-pass takes off the signal as little as anything: what is faint before stays so.
      if (before - best <= FAINT) return [];
      const { at, beside } = nearestMeeting(product, onSignal);
      const frequency = Math.abs(product.m * at + product.sign * product.n * carrier);
      // At no frequency at all nothing comes through; a hertz stands for it.
      const left = before + coupledGain(ladder, Math.max(1, frequency)) - best;
      const outcome: Outcome =
        -left >= seen.wanted ? 'holds' : -left >= seen.wanted - CLOSE ? 'close' : 'fails';
      return [
        {
          name: nameOf(product),
          order: product.m + product.n,
          at,
          frequency,
          beside,
          before,
          left,
          outcome,
        },
      ];
    })
    .filter(({ left }) => left > FAINT)
    .sort((a, b) => b.left - a.left)
    .slice(0, SENT);

  const heard = products.flatMap((product) =>
    (['signal', 'filter'] as const).flatMap((into) => {
      if (into === 'signal' ? isWanted(product) : isFilter(product)) return [];
      const { at, beside } = nearestMeeting(product, into === 'signal' ? onSignal : onFilter);
      if (Math.abs(beside) > seen.window) return [];
      return [
        {
          name: nameOf(product),
          order: product.m + product.n,
          into,
          at,
          frequency: Math.abs(product.m * at + product.sign * product.n * carrier),
          pitch: beside,
        },
      ];
    }),
  );
  return {
    results: {
      sent,
      heard,
      lowestSent: orderWords(lowestWithin(products, onSignal, width / 2, isWanted), seen.most),
      lowestHeard: orderWords(heard[0]?.order ?? null, seen.most),
      choices: choicesFor({
        nominal,
        span: seen.span,
        halfWidth: width / 2,
        window: seen.window,
        products,
      }),
    },
    problems: problems(sent, heard),
  };
}

const orderWords = (order: number | null, most: number): string =>
  order === null ? `nothing up to order ${most}` : `order ${order}`;

/** Orders up to this are loud enough to spoil a receiver. */
const LOUD = 7;

function problems(
  sent: readonly { name: string; frequency: number; left: number; outcome: Outcome }[],
  heard: readonly { name: string; order: number; into: 'signal' | 'filter' }[],
): Problem[] {
  const out: Problem[] = sent
    .filter(({ outcome }) => outcome === 'fails')
    .slice(0, 2)
    .map(({ name, frequency, left }) => ({
      field: 'front.circuits',
      weight: 'warns',
      says: `${name} comes out at ${format(frequency, 'Hz', 5)}, perhaps only ${format(-left, 'dB', 0)} below the signal.`,
      try: 'Where it lies near the signal no band-pass helps: other crystals or the other side. Further away: a third circuit.',
    }));
  const loud = heard.find(({ order }) => order <= LOUD);
  if (loud) {
    out.push({
      field: 'plan.marking',
      weight: 'warns',
      says: `${loud.name} falls on ${loud.into === 'signal' ? 'the signal' : 'the filter'}: a whistle in the receiver without any antenna.`,
      try: 'Other crystals, or the oscillator on the other side: the table of other crystals shows both. Screening and decoupling weaken it.',
    });
  }
  return out;
}
