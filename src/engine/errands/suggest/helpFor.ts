import { format } from '../../quantity/format.ts';
import type { Asked } from './offer.ts';
import type { Help, Lack, Offered } from './suggestAnswer.ts';

/** What to give way in, so that a network passes: the best one for each single thing given up. */
export function helpFor(
  worked: readonly Offered[],
  asked: Asked,
  better: (a: Offered, b: Offered) => number,
): Help[] {
  return ways.flatMap(({ lack, says, least }) => {
    const only = worked
      .filter(({ lacks }) => lacks.length === 1 && lacks[0] === lack)
      .sort((a, b) => least(a) - least(b) || better(a, b));
    const [offered] = only;
    return offered === undefined ? [] : [{ says: says(offered, asked), offered }];
  });
}

const ways: readonly {
  readonly lack: Lack;
  readonly says: (one: Offered, asked: Asked) => string;
  /** What is to be given up least of. */
  readonly least: (one: Offered) => number;
}[] = [
  {
    lack: 'parts',
    says: ({ parts }) => `With ${parts} parts allowed:`,
    least: ({ parts }) => parts,
  },
  { lack: 'family', says: () => 'With another kind of filter allowed:', least: () => 0 },
  { lack: 'match', says: () => 'With the load made another way:', least: () => 0 },
  {
    lack: 'margin',
    says: ({ margin }, asked) =>
      (margin ?? 0) < 0
        ? `The margin comes nearest, ${format(-(margin ?? 0), 'dB', 3)} above the limit, with:`
        : `With a margin of ${format(margin ?? 0, 'dB', 3)} instead of ${format(asked.marginWanted, 'dB', 3)}:`,
    least: ({ margin }) => -(margin ?? 0),
  },
  {
    lack: 'fit',
    says: ({ returnLoss }) => `With a return loss of ${format(returnLoss, 'dB', 3)}:`,
    least: ({ returnLoss }) => -returnLoss,
  },
  {
    lack: 'loss',
    says: ({ loss }) => `With a loss of ${format(loss, 'dB', 4)}; better coils would help too:`,
    least: ({ loss }) => loss,
  },
  {
    lack: 'power',
    says: ({ power }) => `With ${format(power, 'W', 3)} at the antenna:`,
    least: ({ power }) => -power,
  },
];
