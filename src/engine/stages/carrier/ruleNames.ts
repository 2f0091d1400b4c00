/** The ways to place a carrier that stand side by side on the sheet. */
export const ruleNames = {
  attenuation: 'Down the skirt',
  offset: 'Outside the edge',
  frequency: 'As given',
  nearest: 'Nearest in reach',
} as const;

export type RuleName = keyof typeof ruleNames;
