import type { Candidate, Family } from './candidates.ts';

/** What the user leaves out. */
export interface Wishes {
  readonly matchBy: 'any' | 'transformer' | 'pi';
  readonly halfWave: 'yes' | 'no';
  readonly prototypes: 'yes' | 'no';
  readonly traps: 'yes' | 'no';
  readonly elliptic: 'yes' | 'no';
}

/** May a family of filters be suggested? */
export const familyAllowed = (family: Family, wishes: Wishes): boolean =>
  family === 'none' || wishes[family] === 'yes';

/** May a way to make the load be suggested? Straight on needs neither core nor coil. */
export const matchAllowed = ({ choice: { match } }: Candidate, { matchBy }: Wishes): boolean =>
  matchBy === 'any' || match === 'none' || match === matchBy;
