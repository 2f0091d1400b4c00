import { useErrand } from '../../store/errands.ts';
import { useValue } from '../../store/hooks.ts';
import { Errand } from '../bound/Errand.tsx';

/** Pause after the last change before the builds are sent for, ms. */
const PAUSE = 350;

/** Sends for the builds, by itself after each change, and shows how far they are. */
export function BuildThem() {
  const errand = useErrand('yield', { auto: PAUSE });
  const builds = useValue<number>('yield.builds') ?? 0;
  return <Errand of={errand} what={`${builds.toLocaleString('fr')} builds`} run="Build them" />;
}
