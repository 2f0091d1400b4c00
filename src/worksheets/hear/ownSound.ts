import { RATE } from '../../engine/errands/hear/hearAnswer.ts';

/** Longest sound that is taken from a file, and how long the microphone listens, s. */
export const LONGEST = 20;
export const SPOKEN = 10;

/** Under this effective value there is nothing to hear. */
const SILENT = 1e-4;

/** Why a sound could not be had, in words. */
export class NoSound extends Error {}

/**
 * Samples of a sound file at the errand's rate, all channels together.
 *
 * @throws NoSound with words for people
 */
export async function samplesOf(data: ArrayBuffer): Promise<Float32Array> {
  if (typeof OfflineAudioContext === 'undefined') {
    throw new NoSound('This browser can’t read sound.');
  }
  let decoded: AudioBuffer;
  try {
    // Decoding brings it to the context's own rate.
    decoded = await new OfflineAudioContext(1, 1, RATE).decodeAudioData(data);
  } catch {
    throw new NoSound('This is no sound that the browser can read: WAV, MP3 or OGG would do.');
  }
  const length = Math.min(decoded.length, LONGEST * RATE);
  const samples = new Float32Array(length);
  for (let channel = 0; channel < decoded.numberOfChannels; channel += 1) {
    const one = decoded.getChannelData(channel);
    for (let i = 0; i < length; i += 1) samples[i] = (samples[i] ?? 0) + (one[i] ?? 0);
  }
  let power = 0;
  for (const sample of samples) power += sample * sample;
  if (length < RATE / 2) throw new NoSound('It is shorter than half a second.');
  if (Math.sqrt(power / length) < SILENT) throw new NoSound('There is nothing to hear in it.');
  return samples;
}

/**
 * Listens to the microphone for a while and lets go of it.
 *
 * @param stopped resolves when it is to end before its time
 * @throws NoSound with words for people
 */
export async function spoken(stopped: Promise<void>): Promise<Float32Array> {
  if (typeof MediaRecorder === 'undefined' || !navigator.mediaDevices?.getUserMedia) {
    throw new NoSound('This browser has no microphone to give, or gives it to safe pages only.');
  }
  let stream: MediaStream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({
      audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
    });
  } catch {
    throw new NoSound('The microphone was not given. The browser’s own settings decide that.');
  }
  try {
    const recorder = new MediaRecorder(stream);
    const parts: Blob[] = [];
    recorder.ondataavailable = ({ data }) => parts.push(data);
    const ended = new Promise<void>((end) => {
      recorder.onstop = () => end();
    });
    recorder.start();
    await Promise.race([stopped, new Promise((on) => setTimeout(on, SPOKEN * 1000))]);
    recorder.stop();
    await ended;
    return await samplesOf(await new Blob(parts).arrayBuffer());
  } finally {
    for (const track of stream.getTracks()) track.stop();
  }
}
