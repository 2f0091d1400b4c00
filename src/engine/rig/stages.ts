import type { Stage } from '../fields/stage.ts';
import { plan } from '../stages/plan/stage.ts';
import { quartz } from '../stages/quartz/stage.ts';

/** The stages in the order in which they are worked. A stage reads only those before it. */
export const stages: readonly Stage[] = [plan, quartz];
