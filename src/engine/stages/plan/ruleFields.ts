import { choice, count, quantity, table, words } from '../../fields/declare.ts';

/** What was understood of the user's own lines. */
export const ruleFields = {
  ownRows: table({
    label: 'My own lines, as understood',
    help: 'Each line of the text that is neither blank nor a remark.',
    columns: {
      line: count({ label: 'Line', help: 'Of the text, counted from 1.' }),
      from: quantity({
        label: 'From',
        symbol: 'f_from',
        unit: 'Hz',
        digits: 4,
        help: 'Where it begins to hold, this frequency included.',
      }),
      to: quantity({
        label: 'To',
        symbol: 'f_to',
        unit: 'Hz',
        digits: 4,
        help: 'Where it ends, this frequency included; 300 GHz where no end is given.',
      }),
      below: quantity({
        label: 'Below PEP',
        symbol: 'A_line',
        unit: 'dB',
        digits: 3,
        help: 'How far an emission there is to lie below the peak envelope power.',
      }),
      absolute: quantity({
        label: 'Or a level',
        symbol: 'L_line',
        unit: 'dBm',
        digits: 3,
        help: 'How strong an emission there may be at the antenna terminal.',
      }),
      whichever: choice({
        label: 'Where both are given',
        options: { less: 'the milder is enough', more: 'both must hold' },
        help: '“or” between them means the milder, “and” both.',
      }),
      note: words({ label: 'Note', help: 'What was not understood of it.' }),
    },
  }),
} as const;
