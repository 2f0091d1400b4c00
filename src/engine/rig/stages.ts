import type { Stage } from '../fields/stage.ts';
import { antenna } from '../stages/antenna/stage.ts';
import { bag } from '../stages/bag/stage.ts';
import { bench } from '../stages/bench/stage.ts';
import { carrier } from '../stages/carrier/stage.ts';
import { compare } from '../stages/compare/stage.ts';
import { convert } from '../stages/convert/stage.ts';
import { cores } from '../stages/cores/stage.ts';
import { drift } from '../stages/drift/stage.ts';
import { ends } from '../stages/ends/stage.ts';
import { feed } from '../stages/feed/stage.ts';
import { filter } from '../stages/filter/stage.ts';
import { front } from '../stages/front/stage.ts';
import { hear } from '../stages/hear/stage.ts';
import { measure } from '../stages/measure/stage.ts';
import { mismatch } from '../stages/mismatch/stage.ts';
import { output } from '../stages/output/stage.ts';
import { path } from '../stages/path/stage.ts';
import { plan } from '../stages/plan/stage.ts';
import { power } from '../stages/power/stage.ts';
import { products } from '../stages/products/stage.ts';
import { quartz } from '../stages/quartz/stage.ts';
import { receive } from '../stages/receive/stage.ts';
import { speech } from '../stages/speech/stage.ts';
import { strong } from '../stages/strong/stage.ts';
import { suggest } from '../stages/suggest/stage.ts';
import { supply } from '../stages/supply/stage.ts';
import { sweep } from '../stages/sweep/stage.ts';
import { transmit } from '../stages/transmit/stage.ts';
import { windings } from '../stages/windings/stage.ts';
import { yields } from '../stages/yield/stage.ts';

/** The stages in the order in which they are worked. A stage reads only those before it. */
export const stages: readonly Stage[] = [
  plan,
  measure,
  sweep,
  bag,
  quartz,
  filter,
  carrier,
  drift,
  convert,
  front,
  products,
  yields,
  compare,
  transmit,
  ends,
  cores,
  output,
  suggest,
  mismatch,
  windings,
  power,
  antenna,
  feed,
  receive,
  strong,
  supply,
  path,
  hear,
  speech,
  bench,
];
