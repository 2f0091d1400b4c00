import type { Unit as MathUnit } from 'mathjs';
import { alternatives } from './alternatives.ts';
import { noParallel, parallel, parallelLaw } from './combine.ts';
import { math } from './expressionMath.ts';
import { Refused, real, type Worked, walk } from './expressionTree.ts';
import { fieldIn } from './literal.ts';
import { parse } from './parse.ts';
import { type Reading, type Refusal, type Value, valueOr, wrong } from './reading.ts';
import { type Term, type Terms, terms } from './terms.ts';
import { tidy } from './tidy.ts';
import { type Unit, unitRow, units } from './units.ts';

/**
 * Understands all that `parse` does and, beyond it, expressions: 2*47p, 12 V/2,
 * 1/(2*pi*sqrt(30m*17f)), 100p+2*47p, with units and parallels. A walk over the syntax tree that
 * knows numbers, + − * / ^, parallel and a dozen functions: nothing in it can assign, call, loop
 * or run long.
 *
 * @param text as typed
 * @param unit the field's unit; the result must have its dimension, or be a plain number
 * @param options.across Ω in which volts stand for power (50 Ω unless given)
 */
export function readExpression(
  text: string,
  unit: Unit,
  options: { across?: number } = {},
): Reading {
  const simple = parse(text, unit, options);
  if (simple.kind !== 'expression') return simple;
  const cut = terms(tidy(text), unit, options.across);
  if (cut.kind === 'wrong') return cut;
  const strict = work(cut, text, unit, options.across, true);
  // 30 mH*17f: where a unit was left out after a prefix, all are taken in base units.
  const loose = cut.terms.some((term) => term.written === 'prefixed');
  if (strict.kind === 'value' || !loose) return strict;
  const again = work(cut, text, unit, options.across, false);
  if (again.kind !== 'value') return strict;
  const note = 'prefixes without a unit taken in base units';
  return { ...again, note: again.note ? `${again.note}; ${note}` : note };
}

function work(
  { source, terms: list }: Terms,
  text: string,
  unit: Unit,
  across: number | undefined,
  dimensions: boolean,
): Value | Refusal {
  const notes = new Set<string>();
  try {
    const value = walk(
      math.parse(source),
      (place) => withDimension(list[place], dimensions),
      (left, right) => inParallel(left, right, unit, notes),
    );
    return settle(value, list, text, unit, across, dimensions, [...notes].join('; ') || undefined);
  } catch (error) {
    if (error instanceof Refused) return wrong(error.message);
    if (list.some((term) => term.unit) && list.some((term) => term.written !== 'unit')) {
      return wrong('This sum mixes kinds. Give every value its unit, or none of them.');
    }
    return wrong(`“${text.trim()}” can't be worked out as a sum.`);
  }
}

/** Brings a result into the unit of storage, if it has the field's dimension. */
function settle(
  result: Worked,
  list: readonly Term[],
  text: string,
  unit: Unit,
  across: number | undefined,
  dimensions: boolean,
  note: string | undefined,
): Value | Refusal {
  const row = unitRow(unit);
  if (typeof result === 'number') {
    const measured = list.some((term) => term.unit && unitRow(term.unit).dimension !== '');
    if (dimensions && measured && row.dimension !== '') {
      return wrong(`This comes out as a plain number; ${fieldIn(unit)}.`);
    }
    const bare = list.every((term) => term.written === 'bare');
    return valueOr(bare ? result * row.scale + row.zero : result, text, note);
  }
  if (row.dimension !== '' && result.equalBase(math.unit(row.dimension))) {
    return valueOr(si(result), text, note);
  }
  const stated = new Set(list.map((term) => term.unit));
  const fitting = alternatives(unit, across).filter(({ unit: other }) => {
    const { dimension } = unitRow(other);
    return dimension !== '' && result.equalBase(math.unit(dimension));
  });
  // Volts for a power: as peak, rms or peak to peak, if the terms said one of them throughout.
  const meant = fitting.length > 1 ? fitting.filter(({ unit: one }) => stated.has(one)) : fitting;
  const [only] = meant;
  if (meant.length === 1 && only?.convert) {
    const both = [note, only.note].filter((one) => one !== undefined).join('; ');
    return valueOr(only.convert(si(result)), text, both || undefined);
  }
  if (fitting.length > 1) return wrong('Say peak to peak, peak or rms: Vpp, Vpk or Vrms.');
  const kind = (Object.keys(units) as Unit[]).find((one) => {
    const { dimension } = unitRow(one);
    return dimension !== '' && result.equalBase(math.unit(dimension));
  });
  const said = kind ? `as ${unitRow(kind).kind}` : 'in another unit';
  return wrong(`This comes out ${said}; ${fieldIn(unit)}.`);
}

function withDimension(term: Term | undefined, dimensions: boolean): Worked {
  if (!term) throw new Refused('That is no number.');
  const dimension = term.unit && unitRow(term.unit).dimension;
  if (!dimensions || !dimension) return term.value;
  return real(math.multiply(math.unit(dimension), term.value));
}

function inParallel(left: Worked, right: Worked, unit: Unit, notes: Set<string>): Worked {
  const kinds = Object.keys(parallelLaw) as Unit[];
  const kind =
    typeof left === 'number'
      ? kinds.find((one) => one === unit)
      : kinds.find((one) => left.equalBase(math.unit(unitRow(one).dimension)));
  const law = kind && parallelLaw[kind];
  if (!law) {
    throw new Refused(
      typeof left === 'number'
        ? 'Give the parts in parallel their units (pF, Ω, µH), so that it is clear how they combine.'
        : noParallel,
    );
  }
  notes.add(law.says);
  if (typeof left === 'number' && typeof right === 'number') {
    return parallel([left, right], law.adds);
  }
  if (law.adds) return real(math.add(left, right));
  return real(math.divide(math.multiply(left, right), math.add(left, right)));
}

const si = (value: MathUnit): number => Number(value.toSI().value);
