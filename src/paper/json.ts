import type { Field } from '../engine/fields/kinds.ts';
import type { Stage } from '../engine/fields/stage.ts';
import type { Rig } from '../engine/rig/document.ts';
import type { Worked } from '../engine/rig/worked.ts';

/**
 * The whole worked rig as plain data: every input and result with key, label, SI value, unit and
 * origin, and the problems of each stage.
 */
export function workedAsData(rig: Rig, worked: Worked, stages: readonly Stage[]) {
  return {
    format: 'monoband-bench.worked',
    version: 1,
    title: rig.title,
    invented: rig.invented ?? false,
    stages: stages.map(({ fields }) => {
      const answer = worked.stages[fields.key];
      return {
        key: fields.key,
        title: fields.title,
        waitsFor: answer?.waitsFor ?? null,
        problems: answer?.problems ?? [],
        inputs: Object.entries(fields.inputs).map(([name, field]) => {
          const input = worked.inputs[`${fields.key}.${name}`];
          return {
            ...head(`${fields.key}.${name}`, field),
            text: input?.text ?? null,
            value: input?.value ?? null,
            origin: input?.origin ?? 'typical',
          };
        }),
        results: Object.entries(fields.results)
          .filter(([, field]) => field.kind !== 'model')
          .map(([name, field]) => ({
            ...head(`${fields.key}.${name}`, field),
            value: data(answer?.results[name] ?? null),
            origin: answer?.origins[name] ?? 'worked',
          })),
      };
    }),
  };
}

function head(key: string, field: Field) {
  return {
    key,
    label: field.label,
    kind: field.kind,
    unit: 'unit' in field ? field.unit : null,
    ...(field.kind === 'table' ? { columns: units(field.columns) } : {}),
    ...(field.kind === 'curve' ? { columns: units(field.of) } : {}),
  };
}

const units = (columns: Readonly<Record<string, Field>>) =>
  Object.fromEntries(
    Object.entries(columns).map(([k, c]) => [
      k,
      { label: c.label, unit: 'unit' in c ? c.unit : null },
    ]),
  );

/** Typed arrays as plain lists. */
function data(value: unknown): unknown {
  if (value instanceof Float64Array) return Array.from(value);
  if (Array.isArray(value)) return value.map(data);
  if (typeof value === 'object' && value !== null) {
    return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, data(v)]));
  }
  return value;
}
