/**
 * Supply and power at the crest when the supply gives way: currents fall with the swing, so
 * x = (V − Vsat)/(V − Vsat + R·Idc), V′ = V − R·Idc·x, P′ = P·x².
 *
 * @param dcCurrent at full power from a stiff supply, A
 */
export function saggingFinal(
  seen: {
    readonly supply: number;
    readonly saturation: number;
    readonly pep: number;
    readonly supplyResistance: number;
  },
  dcCurrent: number,
) {
  const swing = seen.supply - seen.saturation;
  const drop = seen.supplyResistance * dcCurrent;
  const x = swing / (swing + drop);
  return { sagVoltage: seen.supply - drop * x, sagPower: seen.pep * x * x };
}
