import { choice, count, quantity, table, words } from '../../fields/declare.ts';

const outcomes = { holds: 'holds', close: 'close', fails: 'fails' } as const;

/** Peak flux density, of coils and transformers alike. */
export const flux = quantity({
  label: 'Flux density',
  symbol: 'B_pk',
  unit: 'T',
  digits: 2,
  help: 'Peak, with a steady tone at full power. 1 mT is 10 G.',
});

/** What the flux is held against. */
export const fluxLimit = quantity({
  label: 'Guideline for the flux',
  symbol: 'B_lim',
  unit: 'T',
  digits: 2,
  help: 'Below it the core stays cool. It falls as the frequency rises.',
  source: 'makers’ guideline, from memory',
});

/** How the flux stands to its guideline. */
export const outcome = choice({
  label: 'Flux against the guideline',
  options: outcomes,
  help: 'Holds up to 80 %, close up to 100 %.',
});

/** Every tuned coil of the rig. */
export const coils = table({
  label: 'Coils',
  help: 'One turn is one pass through the hole. Measure after winding: spread the turns to lose inductance, squeeze them to gain.',
  columns: {
    label: words({ label: 'Coil', help: 'Its name in the circuit.' }),
    core: words({ label: 'Core', help: 'Powdered-iron toroid.' }),
    place: choice({
      label: 'Where it lies',
      options: { any: 'to be had', box: 'in the box', lacking: 'not in the box' },
      help: 'Pieces are counted: each coil takes one.',
    }),
    l: quantity({ label: 'Wanted', symbol: 'L', unit: 'H', digits: 4, help: 'Inductance.' }),
    al: quantity({
      label: 'Inductance factor',
      symbol: 'A_L',
      unit: 'H/t²',
      digits: 3,
      help: 'Of this core, ±5 %. Makers list it as µH for 100 turns: ten times the nanohenry shown here.',
    }),
    turnsExact: quantity({
      label: 'Turns, exact',
      symbol: 'N_x',
      unit: 'turns',
      digits: 3,
      help: 'Before rounding.',
    }),
    turns: count({ label: 'Turns', help: 'Count inside the hole.' }),
    lBelow: quantity({
      label: 'With one turn less',
      symbol: 'L_m',
      unit: 'H',
      digits: 3,
      help: 'Inductance.',
    }),
    lAt: quantity({
      label: 'With these turns',
      symbol: 'L_N',
      unit: 'H',
      digits: 3,
      help: 'Inductance, evenly spread over the core but for a gap.',
    }),
    lAbove: quantity({
      label: 'With one turn more',
      symbol: 'L_p',
      unit: 'H',
      digits: 3,
      help: 'Inductance.',
    }),
    lLow: quantity({
      label: 'Meter, at the least',
      symbol: 'L_lo',
      unit: 'H',
      digits: 3,
      help: 'With these turns spread out, on a core at the low end of its tolerance.',
    }),
    lHigh: quantity({
      label: 'Meter, at the most',
      symbol: 'L_hi',
      unit: 'H',
      digits: 3,
      help: 'With these turns spread out, on a core at the high end of its tolerance.',
    }),
    lBunched: quantity({
      label: 'All pushed together',
      symbol: 'L_b',
      unit: 'H',
      digits: 2,
      help: 'About: as far as squeezing goes. Iron powder leaks flux where no turns are, so turns close together share more of it; ferrite hardly notices.',
      source: 'this program’s own model of the ring, within a half of the rise',
    }),
    share: quantity({
      label: 'Spread over',
      symbol: 'c_x',
      unit: '%',
      digits: 2,
      help: 'Of the core’s circumference, so that a core of nominal factor makes what is wanted. The meter decides.',
    }),
    dip: quantity({
      label: 'Resonates with the test capacitor at',
      symbol: 'f_t',
      unit: 'Hz',
      digits: 4,
      help: 'When the coil is right, its own capacitance counted. Lower: too much inductance.',
    }),
    own: quantity({
      label: 'Measured',
      symbol: 'L_own',
      unit: 'H',
      digits: 3,
      help: 'As typed on the Network leaf of Output, where a part is as measured.',
    }),
    advice: words({
      label: 'What to do',
      help: 'With what the meter shows; or beforehand, how far spreading and squeezing go.',
    }),
    off: quantity({
      label: 'Off the wanted value',
      symbol: 'e_L',
      unit: '%',
      digits: 2,
      help: 'By whole turns alone; the core’s own tolerance comes on top.',
    }),
    wire: words({ label: 'Wire', help: 'Enamelled copper, grade 1.' }),
    bare: quantity({
      label: 'Copper diameter',
      symbol: 'd_w',
      unit: 'm',
      digits: 3,
      help: 'Without enamel.',
    }),
    overall: quantity({
      label: 'Diameter over enamel',
      symbol: 'd_o',
      unit: 'm',
      digits: 3,
      help: 'What has to fit.',
    }),
    thickest: quantity({
      label: 'Thickest that fits',
      symbol: 'd_max',
      unit: 'm',
      digits: 3,
      help: 'Over the enamel, in one layer with 30° left free.',
    }),
    fits: choice({
      label: 'Fit',
      options: { fits: 'fits in one layer', crowded: 'does not fit in one layer' },
      help: 'A second layer costs Q and self-resonance.',
    }),
    coverage: quantity({
      label: 'Covered when wound tight',
      symbol: 'c_w',
      unit: '%',
      digits: 2,
      help: 'Share of the inner circumference. The rest is what spreading can use.',
    }),
    length: quantity({
      label: 'Wire to cut',
      symbol: 'l_w',
      unit: 'm',
      digits: 2,
      help: 'Tails included.',
    }),
    resistanceDc: quantity({
      label: 'Resistance, direct current',
      symbol: 'R_dc',
      unit: 'Ω',
      digits: 2,
      help: 'Of the wire at 20 °C.',
    }),
    resistance: quantity({
      label: 'Resistance at the operating frequency',
      symbol: 'R_ac',
      unit: 'Ω',
      digits: 2,
      help: 'With skin effect and neighbouring turns.',
    }),
    q: quantity({
      label: 'Q, estimated',
      symbol: 'Q_w',
      unit: '1',
      digits: 2,
      help: 'At the operating frequency. An estimate within a third: measure it where it matters.',
    }),
    selfCapacitance: quantity({
      label: 'Self-capacitance, at most',
      symbol: 'C_s',
      unit: 'F',
      digits: 2,
      help: 'Of turns that touch; spread turns have less.',
    }),
    resonance: quantity({
      label: 'Self-resonance, at least',
      symbol: 'f_r',
      unit: 'Hz',
      digits: 2,
      help: 'Above it the coil is a capacitor.',
    }),
    flux,
    fluxLimit,
    outcome,
    build: words({ label: 'To do', help: 'The line to have on the bench.' }),
  },
});
