import { choice, count, quantity, table, words } from '../../fields/declare.ts';
import type { Unit } from '../../quantity/units.ts';

const outcomes = { holds: 'holds', close: 'close', fails: 'fails' } as const;

/**
 * A table of test points whose readings share a unit.
 *
 * @param unit of the readings
 * @param label of the table
 * @param digits worth showing
 */
export function readingTable<const U extends Unit>(unit: U, label: string, digits: number) {
  const reading = (name: string, help: string, symbol: string) =>
    quantity({ label: name, symbol, unit, digits, help });
  // A difference of two levels below the carrier is in plain decibels.
  const difference = (name: string, help: string, symbol: string) =>
    quantity({
      label: name,
      symbol,
      unit: unit === 'dBc' ? 'dB' : unit,
      digits: Math.min(digits, 3),
      help,
    });
  return table({
    label,
    help: 'What the meter should show, within what, what it did show, and the verdict.',
    columns: {
      step: count({ label: 'Step', help: 'Place in the order of work along the rig.' }),
      point: words({ label: 'Test point', help: 'Where to measure.' }),
      instrument: words({ label: 'With', help: 'Instrument and setting.' }),
      expected: reading('Expected', 'From the other sheets.', 'E'),
      tolerance: difference(
        'Give or take',
        'Spread of parts and model, and the instrument’s error, as the root of their squares.',
        'T',
      ),
      low: reading('From', 'Lowest reading that holds; blank where lower is better.', 'E_low'),
      high: reading('To', 'Highest reading that holds; blank where higher is better.', 'E_high'),
      measured: reading('Measured', 'As read.', 'x'),
      off: difference('Off by', 'Measured less expected.', 'd_x'),
      verdict: choice({
        label: 'Against design',
        options: outcomes,
        help: 'Within the tolerance it holds, within twice the tolerance it is close.',
      }),
      limit: reading('Rule', 'The limit that a rule or good practice sets.', 'L_rule'),
      rule: choice({
        label: 'Against the rule',
        options: outcomes,
        help: 'Close where less is to spare than wanted. A planning figure: the operator answers for the station.',
      }),
      from: words({ label: 'Why so wide', help: 'Where the tolerance comes from.' }),
      means: words({
        label: 'What it means',
        help: 'What a miss usually comes from; or which sheet the row waits for.',
      }),
    },
  });
}
