interface How {
  /** The fixture is the pi network. */
  readonly pi: boolean;
  /** The first reading of the oscillator goes through a capacitor too. */
  readonly through: boolean;
  /** The oscillator's capacitance comes from a third reading. */
  readonly third: boolean;
}

/** What to do on the bench, in order, for a way of measuring. */
export function stepsOf(method: string, { pi, through, third }: How): readonly string[] {
  if (method === 'fixture') {
    return [
      pi
        ? 'Build the jig short and flat: 1 % resistors, contacts for the crystal close together, the can free.'
        : 'Build the jig short and flat, with a pad of 6 dB or more on either side if generator or meter are not sure to be what they say.',
      'Put a short wire in the crystal’s place and set this level as 0 dB, at the crystal’s frequency.',
      'Put the crystal in. Look for the peak over ±10 kHz round the marking, then over two or three widths of the peak only.',
      'Step no wider than a tenth of the peak, and slowly: wait at each step, or take 30 to 100 Hz of bandwidth. The crystal rings for a millisecond.',
      'Read the frequency of the peak, and its level: the loss.',
      'Find the two frequencies where it is 3 dB down from the peak itself, and take the difference.',
      'Take the crystal out and measure its capacitance, then that of the empty clips.',
    ];
  }
  if (method === 'pair') {
    return [
      'Put the crystal in any two-port jig; the level of the peak does not matter here.',
      'Read the peak. Narrow the sweep until a step is a few hertz.',
      'Go up some tens of kilohertz to the dip. It is deep and noisy: average, and take the middle between equal levels on both sides.',
      'Measure the crystal’s capacitance, then that of the empty clips, and that between the jig’s contacts.',
    ];
  }
  return [
    'Let the oscillator and its supply settle for ten minutes, the crystal in its socket.',
    through
      ? 'Read the counter with the larger of the two series capacitors.'
      : 'Read the counter with the crystal straight in the socket.',
    'Put the smaller capacitor in series and read again. Don’t touch the crystal in between.',
    ...(third
      ? [
          `Go back to the first reading${through ? '' : ', without the series capacitor'}. Connect a known capacitor across the oscillator’s terminals, as large as it bears, and read a third time: a little lower.`,
        ]
      : []),
    'Measure each capacitor that you fitted, and the crystal’s own; what is printed on them won’t do.',
  ];
}
