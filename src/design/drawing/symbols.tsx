/*
 * Line-art symbols after IEC 60617, each drawn around its own origin.
 * Closed shapes are class `body`: filled with the ground, so that the wire ends at their edge.
 */

interface At {
  x: number;
  y: number;
  /** Degrees clockwise; 0 is the direction of reading. */
  turn?: number;
  scale?: number;
}

const place = ({ x, y, turn = 0, scale = 1 }: At) =>
  `translate(${x} ${y})${turn === 0 ? '' : ` rotate(${turn})`}${scale === 1 ? '' : ` scale(${scale})`}`;

export const Microphone = (at: At) => (
  <g transform={place(at)}>
    <circle className="body" r="8" />
    <path d="M-8-9.5v19" />
  </g>
);

export const Loudspeaker = (at: At) => (
  <g transform={place(at)}>
    <path className="body" d="M0-5h7V5H0zM0-5-9-11V11L0 5" />
  </g>
);

/** A triangle that points the way the signal goes. */
export const Amplifier = (at: At) => (
  <path className="body" transform={place(at)} d="M-9-10.5 9.5 0-9 10.5z" />
);

/** Balanced modulator one way, product detector the other. */
export const Modulator = (at: At) => (
  <g transform={place(at)}>
    <circle className="body" r="15" />
    <path d="M-10.6-10.6 10.6 10.6M-10.6 10.6 10.6-10.6" />
  </g>
);

export const Oscillator = (at: At) => (
  <g transform={place(at)}>
    <circle className="body" r="12.5" />
    <path d="M-7 0q3.5-8.5 7 0t7 0" />
  </g>
);

/** A quartz plate between its electrodes, leads left and right. */
export const Crystal = (at: At) => (
  <g transform={place(at)}>
    <path d="M-18 0h10M18 0H8M-8-9.5v19M8-9.5v19" />
    <path className="body" d="M-4.2-11.5h8.4v23h-8.4z" />
  </g>
);

/** A band-pass: three waves, the upper and the lower struck out; a crystal says what it is made of. */
export const CrystalFilter = (at: At) => (
  <g transform={place(at)}>
    <path className="body" d="M-46-24h92v48h-92z" />
    <g transform="translate(22 0)">
      <path d="M-13-12q6.5-8 13 0t13 0M-13 0q6.5-8 13 0t13 0M-13 12q6.5-8 13 0t13 0" />
      <path d="M-4-6.5 4-17.5M-4 17.5 4 6.5" />
    </g>
    <g transform="translate(-23 0)">
      <path d="M-14 0h7M14 0H7M-7-8.5v17M7-8.5v17M-3.5-10.5h7v21h-7z" />
    </g>
  </g>
);

export const Coil = (at: At) => (
  <path
    className="open"
    transform={place(at)}
    d="M-22 0a5.5 5.5 0 0 1 11 0a5.5 5.5 0 0 1 11 0a5.5 5.5 0 0 1 11 0a5.5 5.5 0 0 1 11 0"
  />
);

/** A capacitor from the wire down to ground. */
export const ShuntCapacitor = (at: At) => (
  <g transform={place(at)}>
    <path d="M0 0v12M-9 12H9M-9 17H9M0 17v11M-7 28H7M-4 31.5h8M-1.5 35h3" />
  </g>
);

/** A capacitor in the wire. */
export const SeriesCapacitor = (at: At) => (
  <path transform={place(at)} d="M-22 0h19.5M22 0H2.5M-2.5-8v16M2.5-8v16" />
);

/** Two windings on one core. */
export const Transformer = (at: At) => (
  <g transform={place(at)}>
    <path d="M-8-15a5 5 0 0 1 0 10a5 5 0 0 1 0 10a5 5 0 0 1 0 10M8-15a5 5 0 0 0 0 10a5 5 0 0 0 0 10a5 5 0 0 0 0 10M0-15v30" />
  </g>
);

/** A ring core with its turns. */
export const Toroid = (at: At) => {
  const turns = Array.from({ length: 11 }, (_, i) => {
    const angle = ((150 + i * 24) * Math.PI) / 180;
    const on = (r: number) =>
      `${(r * Math.cos(angle)).toFixed(1)} ${(r * Math.sin(angle)).toFixed(1)}`;
    return `M${on(5.4)}L${on(18)}`;
  });
  return (
    <g transform={place(at)}>
      <circle className="body" r="15.5" />
      <circle className="body" r="8" />
      <path className="wire" d={turns.join('')} />
    </g>
  );
};

export const Antenna = (at: At) => (
  <g transform={place(at)}>
    <path d="M0 0v-32M-11-36 0-20 11-36" />
  </g>
);

/** A wave on its way. */
export const Wave = (at: At) => (
  <g transform={place(at)}>
    <path d="M0-6a12 12 0 0 1 0 12M8-11a20 20 0 0 1 0 22M16-16a28 28 0 0 1 0 32" />
  </g>
);

export const Meter = (at: At) => (
  <g transform={place(at)}>
    <circle className="body" r="17" />
    <path d="M-10.5 3a11 11 0 0 1 21 0M0 8 6.5-6.5" />
    <circle className="dot" cy="8" r="1.6" />
  </g>
);

/** The dial: where on the band. */
export const Dial = (at: At) => (
  <g transform={place(at)}>
    <path d="M-42 10h84M-42 10v-9M-28 10v-5M-14 10v-5M0 10v-9M14 10v-5M28 10v-5M42 10v-9" />
    <path className="wire" d="M9-15V10" />
    <path className="wire" d="M5-15h8" />
  </g>
);

/** Changes over between sending and receiving. */
export const Changeover = (at: At) => (
  <g transform={place(at)}>
    <circle className="body" cx="12" r="2.4" />
    <circle className="body" cx="-10" cy="-12" r="2.4" />
    <circle className="body" cx="-10" cy="12" r="2.4" />
    <path d="M10-1.4-8.4-11" />
  </g>
);

/** Where a reading is taken. */
export const TestPoint = ({ x, y }: At) => <circle className="body point" cx={x} cy={y} r="2.6" />;

/** Which way along the wire. */
export const Arrow = (at: At) => (
  <path className="arrow" transform={place(at)} d="M-4-3.6 4 0-4 3.6z" />
);
