import { currentGain, feedbackAmplifier } from '../../circuit/feedbackAmplifier.ts';
import { type TransistorKey, transistors } from '../../data/devices.ts';

/** What emitter bias and saturation keep of the supply, V. Common practice, no source. */
export const BIAS_ALLOWANCE = 2;

/** One small stage as built. A, Ω, Hz, V. */
export interface SmallStage {
  readonly device: TransistorKey;
  readonly current: number;
  readonly emitter: number;
  readonly feedback: number;
  readonly load: number;
  readonly frequency: number;
  readonly supply: number;
}

/**
 * A small stage between its source and its load.
 *
 * @param source Ω
 * @return figures of `feedbackAmplifier`, and the peak collector voltage (V) and power (W) at which
 *   current or voltage runs out, with which of the two does
 */
export function smallStage(stage: SmallStage, source: number) {
  const { hfe, ft, base } = transistors[stage.device];
  const figures = feedbackAmplifier({
    current: stage.current,
    emitter: stage.emitter,
    feedback: stage.feedback,
    load: stage.load,
    source,
    beta: currentGain(hfe[1], ft, stage.frequency),
    hfe: hfe[1],
    base,
  });
  const byVoltage = stage.supply - BIAS_ALLOWANCE;
  const swing = Math.min(figures.currentLimitedSwing, byVoltage);
  return {
    ...figures,
    clip: swing ** 2 / (2 * stage.load),
    limitedBy:
      figures.currentLimitedSwing < byVoltage ? ('current' as const) : ('voltage' as const),
  };
}
