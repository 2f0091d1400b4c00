/** Ground classes. Source: ITU-R P.527 and P.832 (from memory). */
export const grounds = {
  sea: { conductivity: 5, permittivity: 70 },
  wet: { conductivity: 0.01, permittivity: 30 },
  average: { conductivity: 0.003, permittivity: 22 },
  dry: { conductivity: 0.001, permittivity: 15 },
} as const satisfies Readonly<
  Record<string, { readonly conductivity: number; readonly permittivity: number }>
>;
