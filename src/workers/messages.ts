import type { Share } from '../engine/errands/errand.ts';

/** What the page tells a worker. A ticket number stands for one share of one errand. */
export type Order =
  | {
      readonly kind: 'go';
      readonly ticket: number;
      readonly key: string;
      readonly seen: unknown;
      readonly share: Share;
    }
  | { readonly kind: 'back'; readonly ticket: number };

/** What a worker tells the page. */
export type Report =
  | { readonly kind: 'progress'; readonly ticket: number; readonly done: number }
  | { readonly kind: 'answer'; readonly ticket: number; readonly answer: unknown }
  | { readonly kind: 'failed'; readonly ticket: number; readonly says: string };
