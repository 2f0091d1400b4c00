import type { Field } from '../fields/kinds.ts';
import { stages } from './stages.ts';

const byPath = new Map<string, Field>();
for (const { fields } of stages) {
  for (const [key, field] of Object.entries({ ...fields.inputs, ...fields.results })) {
    byPath.set(`${fields.key}.${key}`, field);
  }
}

/** The declaration of an input or result by its path, or undefined. */
export const fieldAt = (path: string): Field | undefined => byPath.get(path);
