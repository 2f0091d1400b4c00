/** Electrical constants of the ground. */
export interface Ground {
  /** S/m */
  readonly conductivity: number;
  /** Relative permittivity. */
  readonly permittivity: number;
}
