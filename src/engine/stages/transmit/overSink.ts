import { type HeatPath, thermalResistance } from './heat.ts';

/** Heat sinks of the curve, K/W: from a large one to a clip, or somewhat beyond the one there is. */
const FROM = 1;
const TO = 60;
const BEYOND = 1.25;
const POINTS = 41;

/** Junction temperature over the heat sink, on speech and with the worst tone. */
export function overSink(
  ambient: number,
  heat: { readonly dissipationSpeech: number; readonly dissipationTone: number },
  path: Omit<HeatPath, 'sink'>,
  chosen: number,
) {
  if (path.toCase === null) return null;
  const to = Math.max(TO, BEYOND * chosen);
  const sink = Float64Array.from(
    { length: POINTS },
    (_, i) => FROM * (to / FROM) ** (i / (POINTS - 1)),
  );
  const junction = (power: number) =>
    sink.map((r) => ambient + power * thermalResistance({ ...path, sink: r }));
  return {
    sink,
    speech: junction(heat.dissipationSpeech),
    tone: junction(heat.dissipationTone),
  };
}
