/** Effective value of samples. */
export function effective(audio: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < audio.length; i += 1) sum += (audio[i] as number) ** 2;
  return Math.sqrt(sum / Math.max(1, audio.length));
}

/** Makes one signal as strong as another, in place: louder sounds better, and would mislead. */
export function levelMatch(audio: Float64Array, like: Float64Array): void {
  const own = effective(audio);
  if (own === 0) return;
  const gain = effective(like) / own;
  for (let i = 0; i < audio.length; i += 1) audio[i] = (audio[i] as number) * gain;
}
