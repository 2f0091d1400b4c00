import { errand } from '../errand.ts';
import { choose } from './choose.ts';
import { howMany } from './howMany.ts';
import { buyReads, of, reads } from './order.ts';

/** Which crystals of the bag go where, and which makes the carrier. */
export const chooseErrand = errand({ key: 'choose', of, reads, work: choose });

/** How many crystals to buy. */
export const buyErrand = errand({ key: 'buy', of, reads: buyReads, work: howMany });
