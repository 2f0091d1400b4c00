import { coresFields } from '../../stages/cores/fields.ts';
import { outputFields } from '../../stages/output/fields.ts';
import { outputReads } from '../../stages/output/reads.ts';
import { planFields } from '../../stages/plan/fields.ts';
import { unsaid } from '../../stages/suggest/candidates.ts';
import { suggestFields } from '../../stages/suggest/fields.ts';
import { transmitFields } from '../../stages/transmit/fields.ts';
import { errand } from '../errand.ts';
import { suggest } from './suggest.ts';

// What a suggestion says itself is not read: taking one must not send for another.
// Nor what was measured of the parts of another network.
const {
  match,
  loadedQ,
  lowpass,
  order,
  cutoffRatio,
  ripple,
  traps,
  stopBy,
  stopRatio,
  stopWanted,
  measured,
  ...left
} = outputReads;

/** The simplest output network that keeps the rule. */
export const suggestErrand = errand({
  key: 'suggest',
  of: [planFields, transmitFields, coresFields, outputFields, suggestFields],
  reads: {
    ...left,
    prefer: 'suggest.prefer',
    mostParts: 'suggest.mostParts',
    matchBy: 'suggest.matchBy',
    halfWave: 'suggest.halfWave',
    prototypes: 'suggest.prototypes',
    traps: 'suggest.traps',
    elliptic: 'suggest.elliptic',
    fitLeast: 'suggest.fitLeast',
    lossMost: 'suggest.lossMost',
    powerLeast: 'suggest.powerLeast',
  },
  work: (seen) => suggest({ ...seen, ...unsaid, measured: null }, seen),
});
