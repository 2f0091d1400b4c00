import type { Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { Unit } from '../../quantity/units.ts';
import type { planFields } from './fields.ts';
import { type OwnRow, readOwnRules } from './readOwnRules.ts';

type Keys = `ownRows.${keyof (typeof planFields)['results']['ownRows']['columns']}`;

const asWritten = 'as written';

/** How the user's own lines come about. */
export const ruleWorkings: Pick<StageWorkings<typeof planFields>, Keys> = {
  'ownRows.line': (look, i) => written(look, i, 'line', 'n_line', '1'),
  'ownRows.from': (look, i) => written(look, i, 'from', 'f_from', 'Hz'),
  'ownRows.to': (look, i) => written(look, i, 'to', 'f_to', 'Hz'),
  'ownRows.below': (look, i) => written(look, i, 'below', 'A_line', 'dB'),
  'ownRows.absolute': (look, i) => written(look, i, 'absolute', 'L_line', 'dBm'),
  'ownRows.whichever': {
    says: 'The word between the two.',
    rule: '“and” or “both” means that both must hold; otherwise the milder is enough.',
    where: {},
    source: asWritten,
  },
  'ownRows.note': {
    says: 'What is to be said of the line.',
    rule: 'Written where something was not understood.',
    where: {},
    source: 'a plain rule of this program',
  },
};

function written(
  look: Look,
  index: number,
  key: Exclude<keyof OwnRow, 'whichever' | 'note'>,
  symbol: string,
  unit: Unit,
): Working {
  const row = readOwnRules((look('plan.ownRules') as string | null) ?? '').rows[index];
  return {
    says: `As written in line ${row?.line ?? ''}.`,
    formula: symbol,
    where: { [symbol]: { value: row?.[key] ?? 0, unit, says: 'as written' } },
    source: asWritten,
    assumes: 'A frequency without a unit is in megahertz; a power in watts is brought to dBm.',
  };
}
