import { choice, pasted, quantity } from '../../fields/declare.ts';

/** Which rule the harmonics are held against. */
export const ruleInputs = {
  rules: choice({
    label: 'Rules on harmonics',
    options: {
      itu: 'ITU Radio Regulations, Appendix 3',
      us: 'US 47 CFR 97.307(d), installed after 1 January 2003',
      usBefore2003: 'US 47 CFR 97.307(d), installed before',
      cept: 'CEPT, EN 301 783 as in Austria 2008',
      own: 'My own figures',
    },
    default: 'itu',
    help: 'A planning figure: the operator answers for the station; local rules and a measurement decide. All hang on the power and on the frequency that the rig works on.',
  }),
  ownLimit: quantity({
    label: 'My own limit',
    symbol: 'A_own',
    unit: 'dB',
    range: [20, 100],
    default: 50,
    digits: 2,
    help: 'How far each harmonic is to lie below the peak envelope power, where none of your own lines holds. Used with “My own figures”.',
  }),
  ownRules: pasted({
    label: 'My own lines',
    longest: 4000,
    help: 'One a line: from – to, and how far down: 43 dB, or a level such as −36 dBm, or both. “or” means that the milder is enough, “and” that both must hold. Where lines overlap the strictest counts. Ten times the logarithm of the power is a level: 43 + 10 log P is −13 dBm.',
  }),
} as const;
