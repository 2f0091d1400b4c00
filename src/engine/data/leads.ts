/** A lead: its section (m²) and what it bears without getting warm (A). */
export interface Lead {
  readonly title: string;
  readonly area: number;
  readonly bears: number;
}

/**
 * Sections of leads: metric by IEC 60228, AWG by the formula of ASTM B258. What they bear: flexible
 * leads in air, as VDE 0298-4 and practice in the US have it, from memory.
 */
export const leads = {
  mm05: { title: '0.5 mm²', area: 0.5e-6, bears: 3 },
  awg20: { title: 'AWG 20', area: 0.5176e-6, bears: 3 },
  mm075: { title: '0.75 mm²', area: 0.75e-6, bears: 6 },
  awg18: { title: 'AWG 18', area: 0.8231e-6, bears: 7 },
  mm1: { title: '1 mm²', area: 1e-6, bears: 10 },
  awg16: { title: 'AWG 16', area: 1.3087e-6, bears: 13 },
  mm15: { title: '1.5 mm²', area: 1.5e-6, bears: 15 },
  awg14: { title: 'AWG 14', area: 2.081e-6, bears: 15 },
  mm25: { title: '2.5 mm²', area: 2.5e-6, bears: 20 },
  awg12: { title: 'AWG 12', area: 3.3088e-6, bears: 20 },
  mm4: { title: '4 mm²', area: 4e-6, bears: 25 },
} as const satisfies Record<string, Lead>;
