import { z } from 'zod';
import type { StageFields } from './declare.ts';
import type { InputField } from './kinds.ts';

// The page forbids code made from strings, so no compiled validators.
z.config({ jitless: true });

/** Longest text that a field keeps. */
const LONGEST_TEXT = 200;

/** Schema of what may be said about one input: its text, and whether it was read off a meter. */
function entrySchema(field: InputField) {
  const text =
    field.kind === 'choice'
      ? z.enum(Object.keys(field.options) as [string, ...string[]])
      : z.string().max(field.kind === 'pasted' ? field.longest : LONGEST_TEXT);
  return z.strictObject({
    text: text.describe(`${field.label}. ${field.help}`),
    from: z.enum(['typed', 'measured']).optional(),
  });
}

/** Schema of the entries of a whole rig: every input of every stage, each optional. */
export function entriesSchema(all: readonly StageFields[]) {
  const shape: Record<string, z.ZodOptional<ReturnType<typeof entrySchema>>> = {};
  for (const fields of all) {
    for (const [key, field] of Object.entries(fields.inputs)) {
      shape[`${fields.key}.${key}`] = entrySchema(field).optional();
    }
  }
  return z.strictObject(shape);
}
