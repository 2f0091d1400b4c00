import { quantity, table, words } from '../../fields/declare.ts';

/** The signal path from microphone to antenna, a row for each place where a probe can be held. */
export const chain = table({
  label: 'Levels from microphone to antenna',
  help: 'With one tone at peak envelope power. Each row is a place to hold a probe.',
  columns: {
    point: words({ label: 'Point', help: 'Where the probe is held.' }),
    level: quantity({
      label: 'Level',
      symbol: 'L_row',
      unit: 'dBm',
      digits: 3,
      help: 'Power that flows on from here.',
    }),
    vpp: quantity({
      label: 'Voltage',
      symbol: 'V_pp',
      unit: 'Vpp',
      digits: 3,
      help: 'What an oscilloscope shows across this load.',
    }),
    vrms: quantity({
      label: 'Voltage, rms',
      symbol: 'V_rms',
      unit: 'Vrms',
      digits: 3,
      help: 'What an rms voltmeter shows across this load.',
    }),
    load: quantity({
      label: 'Load',
      symbol: 'R_load',
      unit: 'Ω',
      digits: 3,
      help: 'The resistance that the signal meets looking on.',
    }),
    source: quantity({
      label: 'Source',
      symbol: 'R_src',
      unit: 'Ω',
      digits: 3,
      help: 'The resistance looking back.',
    }),
    gain: quantity({
      label: 'Gain to the next row',
      symbol: 'G_row',
      unit: 'dB',
      digits: 3,
      help: 'Power gain of what lies between this row and the next.',
    }),
    toAntenna: quantity({
      label: 'Gain to the antenna',
      symbol: 'G_on',
      unit: 'dB',
      digits: 3,
      help: 'All gains and losses from here on, added up.',
    }),
    clip: quantity({
      label: 'Limit',
      symbol: 'L_clip',
      unit: 'dBm',
      digits: 3,
      help: 'The level at which this point begins to flatten.',
    }),
    headroom: quantity({
      label: 'Headroom',
      symbol: 'H_row',
      unit: 'dB',
      digits: 3,
      help: 'From the level to the limit. The final has none left at full power: it is designed to use its supply.',
    }),
    forward: quantity({
      label: 'Level as built',
      symbol: 'L_fwd',
      unit: 'dBm',
      digits: 3,
      help: 'What arrives here from the microphone with the gains as built and the volume full up. No stage gives more than its limit.',
    }),
    forwardVpp: quantity({
      label: 'Voltage as built',
      symbol: 'V_fwd',
      unit: 'Vpp',
      digits: 3,
      help: 'The same as an oscilloscope shows it.',
    }),
    carrier: quantity({
      label: 'Carrier',
      symbol: 'L_car',
      unit: 'dBm',
      digits: 3,
      help: 'What is left of the carrier here: by the modulator’s null, and behind the filter by its skirt too.',
    }),
    opposite: quantity({
      label: 'Other sideband, 1 kHz',
      symbol: 'L_opp',
      unit: 'dBm',
      digits: 3,
      help: 'As strong as the wanted one up to the filter, held back behind it.',
    }),
    oppositeWorst: quantity({
      label: 'Other sideband, worst tone',
      symbol: 'L_oppw',
      unit: 'dBm',
      digits: 3,
      help: 'For the voice tone that the filter holds back least.',
    }),
    limit: words({ label: 'What limits', help: 'Why there is no more to be had at this point.' }),
  },
});

/** Every transformer between two stages. */
export const couplings = table({
  label: 'Transformers between the stages',
  help: 'Each makes of what follows the load that its collector is designed for.',
  columns: {
    place: words({ label: 'Place', help: 'Between which two stages.' }),
    collector: quantity({
      label: 'Impedance, first side',
      symbol: 'R_1',
      unit: 'Ω',
      digits: 3,
      help: 'On the side that the signal comes from.',
    }),
    following: quantity({
      label: 'Impedance, second side',
      symbol: 'R_2',
      unit: 'Ω',
      digits: 3,
      help: 'On the side that the signal goes to.',
    }),
    turns: quantity({
      label: 'Turns ratio',
      symbol: 'n_12',
      unit: '1',
      digits: 3,
      help: 'Turns of the first winding over those of the second: the root of the impedances.',
    }),
  },
});
