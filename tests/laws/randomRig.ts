import fc from 'fast-check';
import type { InputField } from '../../src/engine/fields/kinds.ts';
import { formatTrimmed } from '../../src/engine/quantity/format.ts';
import { emptyRig, type Rig } from '../../src/engine/rig/document.ts';
import { stages } from '../../src/engine/rig/stages.ts';

/** Paths and declarations of all inputs. */
export const inputFields: readonly (readonly [string, InputField])[] = stages.flatMap(
  ({ fields }) =>
    Object.entries(fields.inputs).map(([key, field]) => [`${fields.key}.${key}`, field] as const),
);

/** Text that a user might have typed into a field, within its range or its typical band. */
export function textFor(field: InputField): fc.Arbitrary<string> {
  if (field.kind === 'pasted') return pastedText(field.longest);
  if (field.kind === 'choice') return fc.constantFrom(...Object.keys(field.options));
  if (field.kind === 'count') {
    const [min, max] = field.range ?? [1, 10];
    return fc.integer({ min, max }).map(String);
  }
  const [low, high] = field.typical ?? near(field.default) ?? field.range ?? [0, 1];
  const unit = field.unit;
  // A millionth of the range is as fine as anybody types: no denormal numbers.
  return fc
    .integer({ min: 0, max: 1_000_000 })
    .map((n) => n / 1_000_000)
    .map((t) => formatTrimmed(low > 0 ? low * (high / low) ** t : low + (high - low) * t, unit, 6));
}

/** Lines of words and numbers, and now and then anything at all. */
const pastedText = (longest: number): fc.Arbitrary<string> => {
  const cell = fc.oneof(
    fc.constantFrom(
      '7.2M',
      'T50-2 x3',
      'L1 1.2u',
      '7199.95 kHz',
      '30m',
      '12',
      '4p7',
      'X3',
      '100p',
      '# MHz S DB R 50',
      '',
    ),
    fc.double({ min: 0, max: 1e7, noNaN: true }).map(String),
    fc.string({ maxLength: 8 }),
  );
  return fc
    .array(
      fc.array(cell, { maxLength: 5 }).map((cells) => cells.join(',')),
      { maxLength: 12 },
    )
    .map((lines) => lines.join('\n').slice(0, longest));
};

function near(value: number | null | undefined): [number, number] | null {
  if (value === null || value === undefined || value <= 0) return null;
  return [value * 0.8, value * 1.25];
}

/** A rig with crystals that exist, and a random half of the other fields said. */
export const randomRig: fc.Arbitrary<Rig> = fc
  .record({
    mark: fc.constantFrom('3.6864M', '4.9152M', '7.2M', '9M', '10M', '14.318M'),
    /** Crystals that stand in the filter, if they are from the bag; and what capacitors there are. */
    bag: fc.option(fc.array(fc.integer({ min: -150, max: 150 }), { minLength: 24, maxLength: 24 })),
    owned: fc.boolean(),
    said: fc.tuple(
      ...inputFields.map(([path, field]) =>
        fc.option(textFor(field), { nil: null, freq: 2 }).map((text) => [path, text] as const),
      ),
    ),
  })
  .map(({ mark, bag, owned, said }) => {
    const entries: Record<string, { text: string }> = {};
    for (const [path, text] of said) {
      const free = /^(plan\.(frequency|marking)|quartz\..*Given|carrier\.frequency)$/.test(path);
      if (text !== null && !free) entries[path] = { text };
    }
    entries['plan.marking'] = { text: mark };
    if (bag)
      Object.assign(entries, fromBag(mark, bag, Number(entries['filter.crystals']?.text ?? 6)));
    if (owned) entries['filter.owned'] = { text: `10p 10${many}` };
    return { ...emptyRig('random'), entries };
  });

/** Capacitors for any filter. */
const many = [12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82, 100, 150, 220, 330, 470]
  .map((pF) => `, ${pF}p x10`)
  .join('');

/** A bag of crystals that are so many hertz off, and as many of them in the filter as it has. */
const fromBag = (mark: string, off: readonly number[], crystals: number) => ({
  'bag.crystals': {
    text: off
      .map((hertz, i) => `X${i + 1}, ${(Number.parseFloat(mark) * 1e6 + hertz - 800).toFixed(0)}`)
      .join('\n'),
  },
  'filter.chosen': {
    text: off
      .slice(0, crystals)
      .map((_, i) => `X${i + 1}`)
      .join(' '),
  },
});
