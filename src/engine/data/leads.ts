/** Cross sections of leads, m²: metric (IEC 60228), and AWG by its formula (ASTM B258). */
export const leads = {
  mm05: { title: '0.5 mm²', area: 0.5e-6, carries: 3 },
  mm075: { title: '0.75 mm²', area: 0.75e-6, carries: 6 },
  mm1: { title: '1 mm²', area: 1e-6, carries: 10 },
  mm15: { title: '1.5 mm²', area: 1.5e-6, carries: 15 },
  mm25: { title: '2.5 mm²', area: 2.5e-6, carries: 20 },
  mm4: { title: '4 mm²', area: 4e-6, carries: 25 },
  awg20: { title: 'AWG 20', area: 0.519e-6, carries: 3 },
  awg18: { title: 'AWG 18', area: 0.823e-6, carries: 7 },
  awg16: { title: 'AWG 16', area: 1.309e-6, carries: 13 },
  awg14: { title: 'AWG 14', area: 2.081e-6, carries: 15 },
  awg12: { title: 'AWG 12', area: 3.309e-6, carries: 20 },
} as const satisfies Record<
  string,
  {
    readonly title: string;
    readonly area: number;
    /** What it carries without getting warm, A: flexible leads (VDE 0298 and US practice, from memory). */
    readonly carries: number;
  }
>;

/** Resistivity of copper at 20 °C, Ω·m. Source: IEC 60028. */
export const COPPER = 1.7241e-8;
