import { choice, count, curve, quantity, table, words } from '../../fields/declare.ts';
import { flux, fluxLimit, outcome } from './tables.ts';

const label = words({ label: 'Where', help: 'Its place in the rig.' });
const core = words({ label: 'Core', help: 'Ferrite; mix 43 names its generation.' });

const first = quantity({
  label: 'Impedance, first side',
  symbol: 'R_1',
  unit: 'Ω',
  digits: 3,
  help: 'What the first winding works across; each half of it where it has a centre tap.',
});

const second = quantity({
  label: 'Impedance, second side',
  symbol: 'R_2',
  unit: 'Ω',
  digits: 3,
  help: 'What the second winding works across; each half of it where it has a centre tap.',
});

const power = quantity({
  label: 'Power through it',
  symbol: 'P_1',
  unit: 'W',
  digits: 2,
  help: 'At full power; blank where the signal is small.',
});

const al = quantity({
  label: 'Inductance factor',
  symbol: 'A_L',
  unit: 'H/t²',
  digits: 3,
  help: 'At low frequency, ±20 to 30 %.',
});

const stores = quantity({
  label: 'Permeability, stores',
  symbol: 'mu_1',
  unit: '1',
  digits: 2,
  help: 'Real part at this frequency: what makes inductance.',
});

const loses = quantity({
  label: 'Permeability, loses',
  symbol: 'mu_2',
  unit: '1',
  digits: 2,
  help: 'Imaginary part at this frequency: what makes heat.',
});

const turnsExact = quantity({
  label: 'Turns by the rule',
  symbol: 'N_x',
  unit: 'turns',
  digits: 3,
  help: 'On the winding with fewer turns: so much impedance that it hardly loads the circuit.',
});

const turnsFlux = quantity({
  label: 'Turns by the flux',
  symbol: 'N_B',
  unit: 'turns',
  digits: 3,
  help: 'On the same winding, so that the core stays cool; blank where the signal is small.',
});

const turns = count({
  label: 'Turns, first winding',
  help: 'Count inside the hole; of each half where it has a centre tap.',
});

const secondTurns = count({
  label: 'Turns, second winding',
  help: 'Of each further winding; of each half where it has a centre tap.',
});

const inductance = quantity({
  label: 'Inductance, first winding',
  symbol: 'L_1',
  unit: 'H',
  digits: 3,
  help: 'As a meter at low frequency shows it.',
});

const shuntR = quantity({
  label: 'Core loss as a resistance',
  symbol: 'R_w',
  unit: 'Ω',
  digits: 3,
  help: 'Across the first winding.',
});

const shuntX = quantity({
  label: 'Reactance beside it',
  symbol: 'X_w',
  unit: 'Ω',
  digits: 3,
  help: 'Across the first winding, too.',
});

const loss = quantity({
  label: 'Loss by the core',
  symbol: 'A_w',
  unit: 'dB',
  digits: 4,
  help: 'Between equal resistances: what the winding takes and what it throws back.',
});

const taken = quantity({
  label: 'Heat in the core',
  symbol: 'P_h',
  unit: 'W',
  digits: 2,
  help: 'With a steady tone at full power.',
});

const rise = quantity({
  label: 'Warmer by',
  symbol: 'T_h',
  unit: 'K',
  digits: 2,
  help: 'Than the air, with a steady tone for some minutes. Within a third.',
});

/** Every broadband transformer of the rig. */
export const transformers = table({
  label: 'Transformers',
  help: 'Windings on ferrite. Mark the starts: where a wire begins is its dot.',
  columns: {
    label,
    does: words({ label: 'What it does', help: 'Why it is there.' }),
    core,
    form: choice({
      label: 'Wound',
      options: {
        over: 'second over the first',
        trifilar: 'three wires together',
        tapped: 'two wires together, the second winding over them',
        halves: 'two wires together over the first winding',
      },
      help: 'How the windings lie.',
    }),
    first,
    second,
    power,
    al,
    stores,
    loses,
    turnsExact,
    turnsFlux,
    turns,
    secondTurns,
    ratioOff: quantity({
      label: 'Ratio off by',
      symbol: 'e_n',
      unit: '%',
      digits: 2,
      help: 'By whole turns. Impedances are off by twice that.',
    }),
    inductance,
    impedance: quantity({
      label: 'Impedance, first winding',
      symbol: 'Z_1',
      unit: 'Ω',
      digits: 3,
      help: 'At the operating frequency, the other windings open.',
    }),
    times: quantity({
      label: 'Over the circuit’s',
      symbol: 'k_1',
      unit: '1',
      digits: 2,
      help: 'Should be four or more.',
    }),
    shuntR,
    shuntX,
    loss,
    taken,
    takenSpeech: quantity({
      label: 'Heat while you speak',
      symbol: 'P_hs',
      unit: 'W',
      digits: 2,
      help: 'On the mean of speech.',
    }),
    rise,
    leakage: quantity({
      label: 'Leakage inductance',
      symbol: 'L_s',
      unit: 'H',
      digits: 2,
      help: 'In series with the first winding. An estimate within a factor of two.',
    }),
    upper: quantity({
      label: 'Good up to',
      symbol: 'f_up',
      unit: 'Hz',
      digits: 2,
      help: 'Where leakage costs 1 dB, or the longest wire is 15° long.',
    }),
    upperBy: choice({
      label: 'Held back by',
      options: { leakage: 'leakage', length: 'length of wire' },
      help: 'What sets the upper limit.',
    }),
    angle: quantity({
      label: 'Longest wire',
      symbol: 'phi_w',
      unit: '°',
      digits: 1,
      help: 'As a part of the wavelength in the air. Up to 15° it is still a coil, not a line.',
    }),
    wire: words({
      label: 'Wire',
      help: 'Thickest that fits with all windings in one layer, up to 0.5 mm.',
    }),
    bare: quantity({
      label: 'Copper diameter',
      symbol: 'd_w',
      unit: 'm',
      digits: 3,
      help: 'Without enamel.',
    }),
    length: quantity({
      label: 'Wire to cut, first winding',
      symbol: 'l_w',
      unit: 'm',
      digits: 2,
      help: 'Tails included; for wires wound together, of each.',
    }),
    secondLength: quantity({
      label: 'Wire to cut, second winding',
      symbol: 'l_w2',
      unit: 'm',
      digits: 2,
      help: 'Tails included; it lies on the first winding, so each turn is a little longer.',
    }),
    flux,
    fluxLimit,
    outcome,
    build: words({ label: 'To do', help: 'The line to have on the bench.' }),
    joins: words({ label: 'Who goes to whom', help: 'Ends of the windings by their letters.' }),
    instead: words({
      label: 'In its place',
      help: 'Where the step is steep, an L match does the same with a single coil, on this one frequency.',
    }),
  },
});

/** Every transformer at the edges of its band. */
export const transformerEdges = table({
  label: 'At the edges of the band',
  help: 'The same windings, a little lower and a little higher.',
  columns: {
    label,
    edge: words({ label: 'At', help: 'Which edge.' }),
    frequency: quantity({
      label: 'Frequency',
      symbol: 'f_e',
      unit: 'Hz',
      digits: 4,
      help: 'Of the edge: the widest of the three regions.',
    }),
    stores,
    loses,
    shuntR,
    shuntX,
    loss,
  },
});

/** One transformer in each mix. */
export const transformerMixes = table({
  label: 'The same transformer in each mix',
  help: 'Same size of core, turns by the same rule: what is left is what the mix does.',
  columns: {
    label,
    core,
    first,
    second,
    power,
    al,
    stores,
    loses,
    turnsExact,
    turnsFlux,
    turns,
    secondTurns,
    inductance,
    shuntR,
    shuntX,
    loss,
    taken,
    rise,
  },
});

const lossIn = (mix: string, symbol: string) =>
  quantity({
    label: `Loss on mix ${mix}`,
    symbol,
    unit: 'dB',
    digits: 4,
    help: 'With the turns of the table.',
  });

/** The transformer of the table of mixes, over frequency. */
export const transformerLosses = curve({
  label: 'Loss in each mix over frequency',
  help: 'Of the transformer in the table of mixes, with the turns that it has there.',
  along: 'frequency',
  of: {
    frequency: quantity({
      label: 'Frequency',
      symbol: 'f',
      unit: 'Hz',
      digits: 3,
      help: 'From 1 to 30 MHz.',
    }),
    in61: lossIn('61', 'A_61'),
    in43: lossIn('43', 'A_43'),
    in77: lossIn('77', 'A_77'),
  },
});

/** Every choke of the rig. */
export const chokes = table({
  label: 'Chokes',
  help: 'Wound on ferrite, or ready-made: as you like.',
  columns: {
    label,
    does: words({ label: 'What it does', help: 'Why it is there.' }),
    resistance: quantity({
      label: 'Across',
      symbol: 'R_ch',
      unit: 'Ω',
      digits: 3,
      help: 'The circuit that it must not load.',
    }),
    direct: quantity({
      label: 'Direct current',
      symbol: 'I_ch',
      unit: 'A',
      digits: 2,
      help: 'At full power.',
    }),
    needed: quantity({
      label: 'Inductance needed',
      symbol: 'L_ch',
      unit: 'H',
      digits: 2,
      help: 'At the operating frequency.',
    }),
    core,
    al,
    stores,
    loses,
    turnsExact,
    turnsFlux,
    turns: count({ label: 'Turns', help: 'Count inside the hole.' }),
    inductance: quantity({
      label: 'Inductance',
      symbol: 'L_1',
      unit: 'H',
      digits: 3,
      help: 'As a meter at low frequency shows it, without direct current.',
    }),
    field: quantity({
      label: 'Field of the direct current',
      symbol: 'H_dc',
      unit: 'A/m',
      digits: 2,
      help: 'Turns times current over the path in the core.',
    }),
    kept: quantity({
      label: 'Inductance left by it',
      symbol: 'm_dc',
      unit: '%',
      digits: 3,
      help: 'The direct current takes the core some way towards saturation.',
    }),
    impedance: quantity({
      label: 'Impedance',
      symbol: 'Z_1',
      unit: 'Ω',
      digits: 3,
      help: 'At the operating frequency, with the direct current flowing.',
    }),
    times: quantity({
      label: 'Over the circuit’s',
      symbol: 'k_1',
      unit: '1',
      digits: 2,
      help: 'Should be about four or more.',
    }),
    taken,
    rise,
    flux,
    fluxLimit,
    outcome,
    wire: words({ label: 'Wire', help: 'Thickest that fits in one layer, up to 0.5 mm.' }),
    bare: quantity({
      label: 'Copper diameter',
      symbol: 'd_w',
      unit: 'm',
      digits: 3,
      help: 'Without enamel.',
    }),
    length: quantity({
      label: 'Wire to cut',
      symbol: 'l_w',
      unit: 'm',
      digits: 2,
      help: 'Tails included.',
    }),
    build: words({ label: 'To do', help: 'The line to have on the bench.' }),
    ready: words({
      label: 'Ready-made in its place',
      help: 'The least value that does it: moulded axial ones are some 10 mm long, radial drums 8 × 10 mm. A dash where none of the list does.',
    }),
    readyL: quantity({
      label: 'Its inductance',
      symbol: 'L_r',
      unit: 'H',
      digits: 2,
      help: 'As printed on it.',
    }),
    readyResonance: quantity({
      label: 'Its self-resonance',
      symbol: 'f_r',
      unit: 'Hz',
      digits: 2,
      help: 'At least twice the operating frequency. Above it, it is a capacitor.',
    }),
    readyMost: quantity({
      label: 'Most it carries',
      symbol: 'I_r',
      unit: 'A',
      digits: 2,
      help: 'Direct current, with a quarter to spare.',
    }),
    readyTimes: quantity({
      label: 'Its reactance over the circuit’s',
      symbol: 'k_r',
      unit: '1',
      digits: 2,
      help: 'Raised by the nearness of its self-resonance.',
    }),
  },
});
