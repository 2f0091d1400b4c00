import { powerRatioOfDb, voltageRatioOfDb } from '../../quantity/decibel.ts';
import { dbmOfWatts } from '../../quantity/power.ts';
import type { TransmitSeen } from './seen.ts';

/** What is left of the carrier and of the other sideband. */
export function workCarrier(
  seen: TransmitSeen,
  sideband: number | null,
  modulatorNull: number | null,
) {
  const { attenuation, suppressionWorst } = seen;
  const carrierSuppression =
    attenuation === null || modulatorNull === null ? null : modulatorNull + attenuation;
  const carrierPower =
    carrierSuppression === null ? null : seen.pep / powerRatioOfDb(carrierSuppression);
  return {
    carrierSuppression,
    carrierPower,
    carrierVpp:
      carrierSuppression === null
        ? null
        : Math.sqrt(8 * seen.pep * seen.antenna) / voltageRatioOfDb(carrierSuppression),
    balance:
      sideband === null || modulatorNull === null
        ? null
        : dbmOfWatts(seen.carrierDrive) - (sideband - modulatorNull),
    oppositeWorst: suppressionWorst === null ? null : seen.pep / powerRatioOfDb(suppressionWorst),
  };
}

export type CarrierLeft = ReturnType<typeof workCarrier>;
