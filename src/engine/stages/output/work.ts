import { lowpassResponse } from '../../circuit/lowpassResponse.ts';
import type { OutputLadder } from '../../circuit/outputLadder.ts';
import { ruleWords } from '../../data/ruleSets.ts';
import { noResults, type Work } from '../../fields/stage.ts';
import { candidateNetwork } from './built.ts';
import { cautions } from './cautions.ts';
import { outputFields } from './fields.ts';
import { measuredCautions } from './measuredCautions.ts';
import { readMeasured } from './readMeasured.ts';
import { refusals } from './refusals.ts';
import type { OutputSeen } from './seen.ts';

/** Points of the response curve. */
const POINTS = 241;

/** The network with the parts fitted, and what comes out of it. */
export function workOutput(seen: OutputSeen): Work<typeof outputFields> {
  const measured = readMeasured(seen.measured);
  const made = candidateNetwork(seen, measured.values);
  if ('refusal' in made) {
    return { results: noResults(outputFields), problems: refusals(seen, made) };
  }
  const results: Work<typeof outputFields>['results'] = {
    ...made.results,
    rule: ruleWords(seen.rules),
    response: responseOf(made.loaded, made.results.transimpedance),
  };
  const problems = [...cautions(seen, made.results), ...measuredCautions(measured, made.parts)];
  return { results, problems };
}

function responseOf(ladder: OutputLadder, transimpedance: number) {
  const frequency = new Float64Array(POINTS);
  const level = new Float64Array(POINTS);
  for (let i = 0; i < POINTS; i += 1) {
    frequency[i] = ladder.reference * 0.5 * 20 ** (i / (POINTS - 1));
  }
  lowpassResponse(ladder, frequency, level);
  for (let i = 0; i < POINTS; i += 1) {
    level[i] = 20 * Math.log10((level[i] ?? 0) / transimpedance);
  }
  return { frequency, level };
}
