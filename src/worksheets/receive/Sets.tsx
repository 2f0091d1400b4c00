import type { Outcome } from '../../design/marks.ts';
import { useValue } from '../../store/hooks.ts';
import { Result } from '../bound/Result.tsx';

type Limit = 'band' | 'both' | 'receiver';

/** What each answer is worth: the best receiver is one that the band outshouts. */
const worth: Readonly<Record<Limit, { of: Outcome; says: string }>> = {
  band: { of: 'holds', says: 'a better receiver would hear no more' },
  both: { of: 'close', says: 'less loss in front would still help' },
  receiver: { of: 'fails', says: 'weak signals drown in its own noise' },
};

/** Who sets the limit, the receiver or the band. */
export function Sets() {
  const sets = useValue<Limit>('receive.sets');
  return <Result of="receive.sets" size="main" verdict={sets === null ? undefined : worth[sets]} />;
}
