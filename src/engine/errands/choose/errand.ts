import { errand } from '../errand.ts';
import { choose } from './choose.ts';
import { of, reads } from './order.ts';

/** Which crystals of the bag go where, which makes the carrier, and how many to buy. */
export const chooseErrand = errand({ key: 'choose', of, reads, work: choose });
