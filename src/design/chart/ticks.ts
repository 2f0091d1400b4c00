/** Round numbers between two ends, about `most` of them: 1, 2, 2.5 or 5 times a power of ten. */
export function ticks(from: number, to: number, most: number): number[] {
  const span = Math.abs(to - from);
  if (!(span > 0) || !Number.isFinite(span) || most < 1) return [from];
  const rough = span / most;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 2.5, 5, 10].map((m) => m * power).find((s) => s >= rough * 0.999) ?? rough;
  const first = Math.ceil(Math.min(from, to) / step - 1e-9);
  const last = Math.floor(Math.max(from, to) / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) =>
    Number(((first + i) * step).toPrecision(12)),
  );
}

/** A figure for an axis: a true minus sign, no needless digits. */
export const plain = (value: number): string =>
  String(Number(value.toPrecision(6))).replace('-', '−');
