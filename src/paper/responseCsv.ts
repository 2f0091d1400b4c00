/** The filter's response, as the graph has it. */
export interface ResponseCurve {
  /** Hz */
  readonly frequency: ArrayLike<number>;
  /** dB */
  readonly gain: ArrayLike<number>;
  /** s */
  readonly delay: ArrayLike<number>;
  /** dB */
  readonly returnLoss: ArrayLike<number>;
}

/** The response as columns between commas, with units in the titles: for any spreadsheet. */
export function responseCsv({ frequency, gain, delay, returnLoss }: ResponseCurve): string {
  const rows = Array.from({ length: frequency.length }, (_, i) =>
    [
      fixed(frequency[i], 3),
      fixed(gain[i], 4),
      fixed((delay[i] ?? Number.NaN) * 1e6, 3),
      fixed(returnLoss[i], 4),
    ].join(','),
  );
  return ['Frequency (Hz),Gain (dB),Group delay (µs),Return loss (dB)', ...rows, ''].join('\r\n');
}

/** An empty cell where there is no figure. */
const fixed = (x: number | undefined, digits: number): string =>
  x !== undefined && Number.isFinite(x) ? String(Number(x.toFixed(digits))) : '';
