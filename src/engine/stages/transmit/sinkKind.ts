import { heatSinks } from '../../data/heatSinks.ts';

/** The smallest of the usual heat sinks that does, for speech and for a steady tone. */
export function sinkKind(speech: number | null, tone: number | null): string {
  const one = (wanted: number | null, what: string): string => {
    if (wanted === null) return `${what}: none`;
    const fit = heatSinks.findLast(({ resistance }) => resistance <= wanted);
    return `${what}: ${fit === undefined ? 'larger than any here' : fit.title}`;
  };
  return `${one(speech, 'For speech')}. ${one(tone, 'For a steady tone')}.`;
}
