import { choice, count, declare, model, quantity, table, words } from '../../fields/declare.ts';
import { coresInputs } from './inputs.ts';
import type { Shelf } from './shelf.ts';

export type { Shelf, ShelfCoil, ShelfCore } from './shelf.ts';

const perTurn = (label: string, symbol: string, help: string) =>
  quantity({ label, symbol, unit: 'H/t²', digits: 3, help });

/** Which cores and wire there are, and what an unknown core is. */
export const coresFields = declare({
  key: 'cores',
  title: 'Core box',
  asks: 'Which cores are there, and what is the unmarked one?',
  inputs: coresInputs,
  results: {
    listed: table({
      label: 'The box',
      help: 'Every line, also those that were not understood.',
      columns: {
        line: count({ label: 'Line', help: 'In the list.' }),
        title: words({ label: 'Core', help: 'As written, or by its name in the table.' }),
        pieces: count({ label: 'Pieces', help: 'One where none are said.' }),
        al: perTurn(
          'Inductance factor',
          'A_L',
          'Of one turn. Makers of iron list µH for 100 turns.',
        ),
        serves: choice({
          label: 'Serves for',
          options: {
            coils: 'tuned coils here',
            other: 'tuned coils at other frequencies',
            windings: 'transformers and chokes',
            nothing: 'not understood',
          },
          help: 'By its mix and the operating frequency.',
        }),
      },
    }),
    pieces: count({ label: 'Cores in the box', help: 'All pieces that were understood.' }),
    al1: perTurn('From the first trial', 'A_L1', 'Inductance over the square of the turns.'),
    al2: perTurn('From the second trial', 'A_L2', 'Inductance over the square of the turns.'),
    apart: quantity({
      label: 'The two disagree by',
      symbol: 'd_AL',
      unit: '%',
      digits: 2,
      help: 'Over 5 % a turn was miscounted, the turns were bunched, or the meter is out of its depth.',
    }),
    agreement: choice({
      label: 'Do the trials agree?',
      options: { holds: 'they agree', fails: 'they disagree' },
      help: 'Within 5 %.',
    }),
    offset: quantity({
      label: 'Leads and meter would have to add',
      symbol: 'L_0',
      unit: 'H',
      digits: 2,
      help: 'The same to both trials, if nothing else is wrong. Some tenths of a microhenry are usual.',
    }),
    doubt: words({
      label: 'What may be wrong',
      help: 'One turn more or less in either trial, or what leads and meter add.',
    }),
    al: perTurn('Its inductance factor', 'A_Lx', 'The mean of the two, or the one that there is.'),
    permeability: quantity({
      label: 'Its permeability',
      symbol: 'mu_x',
      unit: '1',
      digits: 2,
      help: 'From the factor and its dimensions.',
    }),
    likely: words({
      label: 'What it may be',
      help: 'By permeability and factor; colour alone proves nothing.',
    }),
    line: words({
      label: 'As a line of the box',
      help: 'What the button adds.',
    }),
    shelf: model<Shelf>()({
      label: 'Cores and wire to choose from',
      help: 'What Output and Windings wind on.',
    }),
  },
});
