import type { Field, Table } from '../engine/fields/kinds.ts';
import type { Stage } from '../engine/fields/stage.ts';
import { format, formatTrimmed } from '../engine/quantity/format.ts';
import type { Rig } from '../engine/rig/document.ts';
import { shown } from '../engine/rig/moved.ts';
import type { Worked, WorkedStage } from '../engine/rig/worked.ts';

/** The whole worked rig as Markdown: what was said, what came out, what is to be looked at. */
export function markdown(rig: Rig, worked: Worked, stages: readonly Stage[]): string {
  const parts = [`# ${plainLine(rig.title)}`];
  if (rig.invented) parts.push('*Invented example: nobody built this rig.*');
  if (rig.notes) parts.push(rig.notes);
  for (const stage of stages) parts.push(stagePart(stage, worked));
  parts.push(
    '---\n\nPlanning figures. Legal limits and licence conditions are the operator’s to check; ' +
      'measure before you transmit, into a dummy load first.',
  );
  return `${parts.join('\n\n')}\n`;
}

function stagePart(stage: Stage, worked: Worked): string {
  const { key, title, inputs, results } = stage.fields;
  const answer = worked.stages[key];
  const lines = [`## ${title}`];
  const problems = problemLines(answer);
  if (problems.length > 0) lines.push(problems.join('\n'));
  const said = Object.entries(inputs).flatMap(([name, field]) => {
    const input = worked.inputs[`${key}.${name}`];
    if (!input || (input.value === null && input.text === undefined)) return [];
    const value = input.value === null ? 'not understood' : inputShown(field, input.value);
    const typed = input.text === undefined ? '' : ` (as typed: ${code(input.text)})`;
    return [`| ${cell(field.label)} | ${cell(value)}${typed} | ${input.origin} |`];
  });
  if (said.length > 0) lines.push(rows(['Given', 'Value', 'Origin'], said));
  const single: string[] = [];
  const tables: string[] = [];
  for (const [name, field] of Object.entries(results)) {
    const value = answer?.results[name];
    if (value === null || value === undefined) continue;
    if (field.kind === 'table') tables.push(tablePart(field, value as readonly Row[]));
    else if (field.kind === 'list') {
      const list = (value as readonly number[]).map((v) => format(v, field.unit, field.digits));
      single.push(
        `| ${cell(field.label)} | ${cell(list.join(', '))} | ${originOf(answer, name)} |`,
      );
    } else if (field.kind !== 'curve' && field.kind !== 'model') {
      single.push(
        `| ${cell(field.label)} | ${cell(shown(field, value))} | ${originOf(answer, name)} |`,
      );
    }
  }
  if (single.length > 0) lines.push(rows(['Result', 'Value', 'Origin'], single));
  lines.push(...tables);
  return lines.join('\n\n');
}

type Row = Readonly<Record<string, unknown>>;

function tablePart(field: Table, list: readonly Row[]): string {
  const columns = Object.entries(field.columns);
  const body = list.map(
    (row) =>
      `| ${columns.map(([name, column]) => cell(shown(column, row[name]) || '–')).join(' | ')} |`,
  );
  return `**${field.label}**\n\n${rows(
    columns.map(([, column]) => column.label),
    body,
  )}`;
}

function rows(head: readonly string[], body: readonly string[]): string {
  return [`| ${head.map(cell).join(' | ')} |`, `|${head.map(() => '---|').join('')}`, ...body].join(
    '\n',
  );
}

function problemLines(answer: WorkedStage | undefined): string[] {
  return (answer?.problems ?? []).map(
    ({ weight, field, says, try: help }) =>
      `- **${weight === 'stops' ? 'Stops' : 'Look here'}** (${code(field)}): ${says}${help ? ` ${help}` : ''}`,
  );
}

function inputShown(field: Field, value: number | string): string {
  return field.kind === 'quantity' && typeof value === 'number'
    ? formatTrimmed(value, field.unit, 9)
    : shown(field, value);
}

const originOf = (answer: WorkedStage | undefined, name: string) =>
  answer?.origins[name] ?? 'worked';
const plainLine = (text: string) => text.replace(/[\r\n]+/g, ' ');
/** Plain spaces, so that the sheet can be searched and cut like any text. */
const cell = (text: string) =>
  plainLine(text)
    .replace(/[\u00a0\u2009\u202f]/g, ' ')
    .replace(/\|/g, '\\|');
const code = (text: string) => `\`${cell(text).replace(/`/g, 'ʼ')}\``;
