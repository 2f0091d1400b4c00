import { type HeatPath, thermalResistance } from './heat.ts';

/** Heat sinks of the curve, K/W: from a large one to a clip. */
const FROM = 1;
const TO = 60;
const POINTS = 41;

/** Junction temperature over the heat sink, on speech and with the worst tone. */
export function overSink(
  ambient: number,
  heat: { readonly dissipationSpeech: number; readonly dissipationTone: number },
  path: Omit<HeatPath, 'sink'>,
) {
  if (path.toCase === null) return null;
  const sink = Float64Array.from(
    { length: POINTS },
    (_, i) => FROM * (TO / FROM) ** (i / (POINTS - 1)),
  );
  const junction = (power: number) =>
    sink.map((r) => ambient + power * thermalResistance({ ...path, sink: r }));
  return {
    sink,
    speech: junction(heat.dissipationSpeech),
    tone: junction(heat.dissipationTone),
  };
}
