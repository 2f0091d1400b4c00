import { type TransistorModelKey, transistorModels } from '../../data/transistorModels.ts';
import { formatTrimmed } from '../../quantity/format.ts';
import { type ChosenCard, cardKeys, type Whence } from './cardOf.ts';
import { type CardKey, cardParameters } from './cardParameters.ts';
import type { ReadCard } from './readCard.ts';

/** What decides a final's behaviour most: shown even where nobody typed it. */
const main: readonly CardKey[] = [
  'is',
  'bf',
  'vaf',
  'ikf',
  'rb',
  're',
  'rc',
  'cje',
  'cjc',
  'vjc',
  'mjc',
  'tf',
  'xtf',
  'vtf',
  'itf',
  'tr',
];

/** A line of the table. */
interface CardRow {
  readonly parameter: string;
  readonly what: string;
  readonly value: string;
  readonly whence: Whence;
}

/** The parameters that matter, and those that the user's own card names. */
export function cardRows({ card, whence }: ChosenCard): CardRow[] {
  return cardKeys
    .filter((key) => main.includes(key) || whence(key) === 'own')
    .map((key) => {
      const { names, what, unit } = cardParameters[key];
      const value = card[key];
      return {
        parameter: names[0] ?? '',
        what,
        value: Number.isFinite(value) ? formatTrimmed(value, unit, 4) : 'without limit',
        whence: whence(key),
      };
    });
}

/** Whose card it is, in words. */
export function cardSource(device: TransistorModelKey, read: ReadCard | null): string {
  const { name, source } = transistorModels[device];
  const own = read === null ? 0 : Object.keys(read.values).length;
  if (own === 0) return `${name}: ${source}`;
  if (read?.whole) {
    const yours = read.name === '' ? 'Your card' : `Your card “${read.name}”`;
    return `${yours}; what it leaves out has the value that the published notation gives it.`;
  }
  return `${own === 1 ? 'One parameter' : `${own} parameters`} of your own, the rest from ${name}: ${source}`;
}
