/** Sounds of one length by their names. */
export type Sounds = ReadonlyMap<string, Float32Array<ArrayBuffer>>;

/** From one sound to another, s: without a click, and faster than can be heard. */
const FADE = 0.012;

interface Running {
  readonly gains: ReadonlyMap<string, GainNode>;
  readonly sources: readonly AudioBufferSourceNode[];
  /** When second 0 of the sounds was, by the context's clock. */
  readonly began: number;
}

/** Plays several sounds at once, of which one is heard: so that one can be changed for another at once. */
export class Player {
  private context: AudioContext | null = null;
  private running: Running | null = null;
  private sounds: Sounds = new Map();
  private rate = 16_000;
  private seconds = 0;
  private heard = '';

  /** Whether this browser can play at all. */
  static get able(): boolean {
    return typeof AudioContext !== 'undefined';
  }

  /** Other sounds from now on; what plays goes on at the same place. */
  lay(sounds: Sounds, rate: number): void {
    const at = this.position();
    this.sounds = sounds;
    this.rate = rate;
    const [first] = sounds.values();
    this.seconds = (first?.length ?? 0) / rate;
    if (at !== null) this.start(this.seconds > 0 ? at % this.seconds : 0);
  }

  /** Which one is heard. */
  choose(name: string): void {
    this.heard = name;
    if (!this.running || !this.context) return;
    const now = this.context.currentTime;
    for (const [key, { gain }] of this.running.gains) {
      gain.cancelScheduledValues(now);
      gain.setTargetAtTime(key === name ? 1 : 0, now, FADE / 3);
    }
  }

  /** Begins, over and over until it is stopped. */
  async play(): Promise<void> {
    this.context ??= new AudioContext();
    await this.context.resume();
    this.start(0);
  }

  stop(): void {
    for (const source of this.running?.sources ?? []) source.stop();
    this.running = null;
  }

  /** Where it is just now, s; null while nothing plays. */
  position(): number | null {
    if (!this.running || !this.context || this.seconds === 0) return null;
    return (this.context.currentTime - this.running.began) % this.seconds;
  }

  private start(at: number): void {
    this.stop();
    const { context } = this;
    if (!context || this.seconds === 0) return;
    const when = context.currentTime + 0.02;
    const gains = new Map<string, GainNode>();
    const sources: AudioBufferSourceNode[] = [];
    for (const [name, samples] of this.sounds) {
      const buffer = context.createBuffer(1, samples.length, this.rate);
      buffer.copyToChannel(samples, 0);
      const source = context.createBufferSource();
      source.buffer = buffer;
      source.loop = true;
      const gain = context.createGain();
      gain.gain.value = name === this.heard ? 1 : 0;
      source.connect(gain).connect(context.destination);
      source.start(when, at);
      gains.set(name, gain);
      sources.push(source);
    }
    this.running = { gains, sources, began: when - at };
  }
}
