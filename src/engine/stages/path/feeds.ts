import type { PathSeen } from './seen.ts';

/** Losses of the feed lines at both ends, dB. */
export const feedsOf = ({ feedLoss, farFeedLoss }: Pick<PathSeen, 'feedLoss' | 'farFeedLoss'>) => ({
  here: feedLoss,
  there: farFeedLoss,
});
