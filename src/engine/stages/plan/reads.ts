/** What the Plan reads: its own entries only. */
export const planReads = {
  frequency: 'plan.frequency?',
  marking: 'plan.marking?',
  pep: 'plan.pep',
  antenna: 'plan.antenna',
} as const;
