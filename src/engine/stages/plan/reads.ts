/** What the Plan reads: its own entries only. */
export const planReads = {
  frequency: 'plan.frequency?',
  marking: 'plan.marking?',
  scheme: 'plan.scheme',
  side: 'plan.side',
  sideband: 'plan.sideband',
  pep: 'plan.pep',
  antenna: 'plan.antenna',
  ownRules: 'plan.ownRules?',
} as const;
