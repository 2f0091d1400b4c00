import { useErrand } from '../../store/errands.ts';
import { Errand } from '../bound/Errand.tsx';

/** Pause after the last change before the filters are sent for, ms. */
const PAUSE = 300;

/** Sends for the filters, by itself after each change. */
export function WorkThem() {
  const errand = useErrand('compare', { auto: PAUSE });
  return <Errand of={errand} what="Filters designed and worked" run="Work them" />;
}
