import type { ReactNode } from 'react';
import type { DrawnBlock } from './Drawing.tsx';
import {
  Amplifier,
  Antenna,
  Arrow,
  Changeover,
  Coil,
  Crystal,
  CrystalFilter,
  Dial,
  Loudspeaker,
  Meter,
  Microphone,
  Modulator,
  Oscillator,
  ShuntCapacitor,
  TestPoint,
  Toroid,
  Transformer,
  Wave,
} from './symbols.tsx';

/** Heights of the transmit lane, the receive lane, the wire common to both, and the parts below. */
const up = 30;
const down = 66;
const mid = 48;
const parts = 106;

/**
 * The rig across the page, 120 units a stage: transmit lane above, receive lane below, one wire
 * where both share a part. Decoration for the eye: the links stand beneath, in the same columns.
 */
export function RigPicture({
  blocks,
  current,
  onChoose,
}: {
  blocks: readonly DrawnBlock[];
  current: string;
  onChoose: (key: string) => void;
}) {
  const part = (key: string, children: ReactNode) => {
    const block = blocks.find((one) => one.key === key);
    return (
      // biome-ignore lint/a11y/noStaticElementInteractions: a second, larger target for the mouse only
      <g
        key={key}
        data-current={key === current}
        data-state={block?.state}
        onClick={() => block && onChoose(key)}
      >
        {children}
      </g>
    );
  };

  return (
    <svg className="rig" viewBox="0 0 1200 130" aria-hidden="true">
      {part('plan', <Dial x={60} y={mid} />)}

      {part(
        'receive',
        <>
          <path d={`M142 ${down}H262L287 ${mid + 4}`} />
          <Loudspeaker x={138} y={down} />
          <Amplifier x={196} y={down} turn={180} />
          <Arrow x={238} y={down} turn={180} />
          <path d={`M588 ${mid + 4}L606 ${down}H836`} />
          <Arrow x={742} y={down} turn={180} />
        </>,
      )}

      {part(
        'transmit',
        <>
          <path d={`M142 ${up}H262L287 ${mid - 4}`} />
          <Microphone x={138} y={up} />
          <Amplifier x={196} y={up} />
          <Arrow x={238} y={up} />
          <path d={`M588 ${mid - 4}L606 ${up}H836`} />
          <Amplifier x={634} y={up} scale={0.8} />
          <Amplifier x={690} y={up} scale={1.7} />
        </>,
      )}

      <g className="common">
        <path
          d={`M315 ${mid}H348L360 ${up + 4}H396L408 ${mid}H560M348 ${mid}L360 ${down - 4}H396L408 ${mid}`}
        />
        <Amplifier x={378} y={up + 4} scale={0.8} />
        <Amplifier x={378} y={down - 4} scale={0.8} turn={180} />
        <path d={`M560 ${mid}h28`} />
        <Amplifier x={634} y={down} scale={0.8} turn={180} />
      </g>

      {part(
        'carrier',
        <>
          <path d={`M300 ${mid}V${parts}`} />
          <Modulator x={300} y={mid} />
          <Oscillator x={300} y={parts} />
        </>,
      )}

      {part(
        'quartz',
        <>
          <path className="lead" d={`M313 ${parts}H402M438 ${parts}H540V72`} />
          <Crystal x={420} y={parts} />
        </>,
      )}

      {part('filter', <CrystalFilter x={540} y={mid} />)}

      {part(
        'windings',
        <>
          <path className="lead" d={`M780 ${up + 18}V${parts - 16}M796 ${parts}H900V56`} />
          <Toroid x={780} y={parts} />
          <path className="body blank" d={`M772 ${up - 16}h16v32h-16z`} />
          <Transformer x={780} y={up} />
        </>,
      )}

      {part(
        'output',
        <>
          <path d={`M858 ${mid}H890M934 ${mid}H1010`} />
          <Changeover x={846} y={mid} />
          <path d={`M836 ${up}v6M836 ${down}v-6`} />
          <ShuntCapacitor x={878} y={mid} />
          <Coil x={912} y={mid} />
          <ShuntCapacitor x={946} y={mid} />
        </>,
      )}

      {part(
        'path',
        <>
          <path d={`M1010 ${mid}H1020`} />
          <Antenna x={1020} y={mid} />
          <Wave x={1046} y={22} />
        </>,
      )}

      {part(
        'bench',
        <>
          <path
            className="lead"
            d={`M1140 ${mid + 17}V122H220V${down + 4}M660 122V${up + 4}M978 122V${mid + 4}`}
          />
          <TestPoint x={220} y={down} />
          <TestPoint x={660} y={up} />
          <TestPoint x={978} y={mid} />
          <Meter x={1140} y={mid} />
        </>,
      )}
    </svg>
  );
}
