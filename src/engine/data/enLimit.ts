/**
 * Least attenuation of a conducted spurious emission by EN 301 783, as enacted in one CEPT country.
 *
 * The table holds or the absolute level does (−36 dBm to 1 GHz, −30 dBm above), whichever asks
 * less. Below 0.15 MHz nothing is asked; the table's figure for 1.7 MHz itself is the milder one.
 *
 * @param frequency of the emission, Hz
 * @param power peak envelope power of the transmitter, W
 * @returns dB below PEP; negative where the absolute level exceeds the transmitter's own power
 * Source: EN 301 783 as enacted in Austria, 2008.
 */
export function enLimit(frequency: number, power: number): number {
  const floorDbm = frequency <= 1e9 ? -36 : -30;
  const untilFloor = 10 * Math.log10(power / 1e-3) - floorDbm;
  return Math.min(table(frequency), untilFloor);
}

function table(frequency: number): number {
  if (frequency < 0.15e6) return 0;
  if (frequency < 1.7e6) return 60;
  if (frequency <= 35e6) return 40;
  if (frequency < 50e6) return 40 + 129.1 * Math.log10(frequency / 35e6);
  return 60;
}
