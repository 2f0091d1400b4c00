import { z } from 'zod';
import { entriesSchema } from '../fields/schema.ts';
import type { Rig } from './document.ts';
import { migrate } from './migrate.ts';
import { stages } from './stages.ts';

/** Largest file that is looked at, in characters. */
export const LARGEST_FILE = 1_000_000;

const schema = z.strictObject({
  format: z.literal('monoband-bench.rig'),
  version: z.literal(4),
  title: z.string().max(200),
  invented: z.boolean().optional(),
  notes: z.string().max(20_000).optional(),
  entries: entriesSchema(stages.map(({ fields }) => fields)),
});

/** A rig read from a file, or the reasons why it was refused. */
export type FileReading =
  | { readonly ok: true; readonly rig: Rig }
  | { readonly ok: false; readonly reasons: readonly string[] };

/** Reads the text of a rig file. Whatever the text, this answers and never throws. */
export function readRigFile(text: string): FileReading {
  if (text.length > LARGEST_FILE) return refuse('The file is larger than any rig.');
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
    return refuse(`This is not a JSON file, or it is damaged: ${detail}.`);
  }
  const kind = headOf(data);
  if (kind !== null) return refuse(kind);
  const parsed = schema.safeParse(migrate(data as Record<string, unknown>));
  if (parsed.success) return { ok: true, rig: parsed.data as Rig };
  return { ok: false, reasons: parsed.error.issues.slice(0, 12).map(reason) };
}

/** The text of a rig file, readable by people too. */
export function writeRigFile(rig: Rig): string {
  return `${JSON.stringify(rig, null, 2)}\n`;
}

/** JSON Schema (draft 2020-12) of the rig file. */
export const rigFileSchema = (): unknown => z.toJSONSchema(schema);

/** Why this is no rig of ours at all, or null if it says that it is one. */
function headOf(data: unknown): string | null {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    return 'The file holds no rig: it should be one JSON object.';
  }
  const { format, version } = data as Record<string, unknown>;
  if (format !== 'monoband-bench.rig') {
    return 'The file is of another kind: its “format” is not “monoband-bench.rig”.';
  }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return 'The file does not say which version it is.';
  }
  if (version > 4) {
    return `The file is of version ${version}; this bench reads up to version 4. A newer bench can open it.`;
  }
  return null;
}

function reason(issue: z.core.$ZodIssue): string {
  const place = issue.path.join(' › ');
  if (issue.code === 'unrecognized_keys') {
    const keys = issue.keys.slice(0, 6).map((k) => `“${k.slice(0, 60)}”`);
    return `${place === '' ? 'The rig' : place} holds what this version does not know: ${keys.join(', ')}.`;
  }
  return `${place === '' ? 'The rig' : place}: ${issue.message}.`;
}

const refuse = (says: string): FileReading => ({ ok: false, reasons: [says] });
