import type { PathSeen } from './seen.ts';

/** Losses of the feed lines at both ends, dB: as the Feed line leaf has them, or as typed. */
export const feedsOf = ({
  lineLoss,
  farLineLoss,
  feedLoss,
  farFeedLoss,
}: Pick<PathSeen, 'lineLoss' | 'farLineLoss' | 'feedLoss' | 'farFeedLoss'>) => ({
  here: lineLoss ?? feedLoss,
  there: farLineLoss ?? farFeedLoss,
});
