import { TOO_GOOD, TOO_POOR, USUAL } from './dcSanity.ts';

/**
 * What the ratio of radio power out to direct power in says, in words.
 *
 * @param ratio out over in
 * @param whole true where the whole transmitter's current was used
 */
export function dcMeans(ratio: number, whole: boolean): string {
  const note = whole
    ? ' The whole transmitter’s current was used: the final alone does better.'
    : '';
  if (ratio > TOO_GOOD) {
    return `More than a class AB or B stage can give: the power is read wrong. Probe on the wrong setting, V pp taken for V peak, dummy load not what it says, or harmonics in the voltage.${note}`;
  }
  if (ratio < TOO_POOR) {
    return `Too little comes out for what goes in: wrong collector load, a lossy core or network (feel what is hot), or oscillation. On voice a wattmeter shows a fraction of the peak.${note}`;
  }
  if (ratio > USUAL[1])
    return `Better than most: check the probe and the dummy load once more.${note}`;
  if (ratio < USUAL[0]) return `On the low side: class A, or some loss after the collector.${note}`;
  return `As built stages are.${note}`;
}
