import {
  absDependencies,
  acosDependencies,
  addDependencies,
  asinDependencies,
  atan2Dependencies,
  atanDependencies,
  cosDependencies,
  create,
  divideDependencies,
  expDependencies,
  type FactoryFunctionMap,
  log2Dependencies,
  log10Dependencies,
  logDependencies,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  parseDependencies,
  piDependencies,
  powDependencies,
  sinDependencies,
  sqrtDependencies,
  subtractDependencies,
  sumDependencies,
  tanDependencies,
  unaryMinusDependencies,
  unaryPlusDependencies,
  unitDependencies,
} from 'mathjs';

/** The parts of mathjs in use, about 100 kB gzipped: reach this file by a lazy import only. */
export const makers = {
  parseDependencies,
  unitDependencies,
  addDependencies,
  subtractDependencies,
  multiplyDependencies,
  divideDependencies,
  powDependencies,
  unaryMinusDependencies,
  unaryPlusDependencies,
  sqrtDependencies,
  absDependencies,
  expDependencies,
  logDependencies,
  log2Dependencies,
  log10Dependencies,
  sinDependencies,
  cosDependencies,
  tanDependencies,
  asinDependencies,
  acosDependencies,
  atanDependencies,
  atan2Dependencies,
  minDependencies,
  maxDependencies,
  sumDependencies,
  piDependencies,
};

/**
 * The one mathjs of the app: syntax trees, units and elementary functions. It has neither
 * `evaluate` nor anything that simplifies, derives, loops or makes units, and can't be changed.
 */
export const math = lock(create(makers as FactoryFunctionMap));

function lock<Instance extends object>(instance: Instance): Instance {
  const refuse = (): never => {
    throw new Error('This mathjs is locked.');
  };
  return Object.assign(instance, { import: refuse, create: refuse, config: refuse });
}
