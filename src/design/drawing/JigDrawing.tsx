import type { ReactNode } from 'react';
import { Crystal, Meter, Oscillator } from './symbols.tsx';
import './jig.css';

/** The circuits in which a crystal is measured. */
export type Jig = 'pi' | 'plain' | 'shift' | 'third';

interface JigDrawingProps {
  jig: Jig;
  /** What the picture shows, in words. */
  label: string;
  /** Beside the resistors at either end, ready to read: `50 Ω`. */
  end?: string | undefined;
  /** A capacitor stands in series at the first reading too. */
  throughBoth?: boolean;
}

/** The jig in line art, with the names that the fields give its parts. */
export function JigDrawing({ jig, label, end, throughBoth = false }: JigDrawingProps) {
  return (
    <svg
      className="jig"
      viewBox={jig === 'shift' || jig === 'third' ? '0 0 400 214' : '0 0 400 150'}
      role="img"
      aria-label={label}
    >
      {jig === 'pi' && <PiNetwork />}
      {jig === 'plain' && <Plain end={end ?? ''} />}
      {(jig === 'shift' || jig === 'third') && (
        <Colpitts third={jig === 'third'} throughBoth={throughBoth} />
      )}
    </svg>
  );
}

function Plain({ end }: { end: string }) {
  return (
    <>
      <path d="M40 60H82M114 60H182M218 60H360M310 60v22M310 114v14M40 76V128M360 77V128" />
      <Ground at={[40, 310, 360]} y={128} />
      <Oscillator x={40} y={62} scale={1.1} />
      <Resistor x={98} y={60} />
      <Crystal x={200} y={60} />
      <Resistor x={310} y={98} upright />
      <Meter x={360} y={60} scale={0.9} />
      <Short />
      <Name x={98} y={44}>
        {end}
      </Name>
      <Name x={298} y={102} anchor="end">
        {end}
      </Name>
      <Name x={40} y={34}>
        generator
      </Name>
      <Name x={356} y={34}>
        level
      </Name>
    </>
  );
}

function PiNetwork() {
  return (
    <>
      <path d="M24 60H84M112 60H182M218 60H288M316 60H376M24 76V128M376 77V128M60 60v22M60 114v14M136 60v22M136 114v14M264 60v22M264 114v14M340 60v22M340 114v14" />
      <Ground at={[24, 60, 136, 264, 340, 376]} y={128} />
      <Oscillator x={24} y={62} scale={1.1} />
      <Resistor x={98} y={60} />
      <Resistor x={302} y={60} />
      {[60, 136, 264, 340].map((x) => (
        <Resistor key={x} x={x} y={98} upright />
      ))}
      <Crystal x={200} y={60} />
      <Meter x={376} y={60} scale={0.9} />
      <Short />
      <Name x={98} y={44}>
        66.2 Ω
      </Name>
      <Name x={302} y={44}>
        66.2 Ω
      </Name>
      <Name x={72} y={102} anchor="start">
        159
      </Name>
      <Name x={148} y={102} anchor="start">
        14.2 Ω
      </Name>
      <Name x={252} y={102} anchor="end">
        14.2 Ω
      </Name>
      <Name x={328} y={102} anchor="end">
        159
      </Name>
      <Name x={2} y={20} anchor="start">
        50 Ω generator
      </Name>
      <Name x={398} y={20} anchor="end">
        50 Ω level
      </Name>
    </>
  );
}

/** The piece of wire in the crystal's place. */
function Short() {
  return (
    <>
      <path className="dashed" d="M166 60V22H234V60" />
      <Name x={200} y={16}>
        0 dB with this
      </Name>
    </>
  );
}

function Colpitts({ third, throughBoth }: { third: boolean; throughBoth: boolean }) {
  return (
    <>
      <path d="M52 60H228M52 60v18M52 114v22M52 146v34M164 60v32M164 98v36M164 140v40M164 116H248M228 46v28M228 54 248 42V22M228 66 248 78V138M248 170v10M248 116h62" />
      <path className="arrow" d="M248 78l-8.6-1 4.6-7.4z" />
      <circle cx={238} cy={60} r={20} />
      <path d="M244 22h8M248 18v8" />
      <Ground at={[52, 164, 248]} y={180} />
      <Crystal x={52} y={96} turn={90} />
      <Plates x={52} y={141} />
      <Plates x={164} y={95} />
      <Plates x={164} y={137} />
      <Resistor x={248} y={154} upright />
      <path d="M310 100h64v32h-64z" />
      <Name x={342} y={121}>
        counter
      </Name>
      <Name x={66} y={145} anchor="start">
        {throughBoth ? 'Cs1, Cs2' : 'Cs2'}
      </Name>
      {!throughBoth && (
        <>
          <path className="dashed" d="M52 126H24V156H52" />
          <Name x={2} y={206} anchor="start">
            first reading: wire across Cs2
          </Name>
        </>
      )}
      <Name x={178} y={92} anchor="start">
        feedback
      </Name>
      <Name x={178} y={144} anchor="start">
        feedback
      </Name>
      {third && (
        <>
          <path className="dashed" d="M116 60v28M116 94v86" />
          <Plates x={116} y={91} />
          <Ground at={[116]} y={180} />
          <Name x={104} y={118}>
            Cx
          </Name>
        </>
      )}
    </>
  );
}

function Name({
  x,
  y,
  anchor = 'middle',
  children,
}: {
  x: number;
  y: number;
  anchor?: 'start' | 'middle' | 'end';
  children: ReactNode;
}) {
  return (
    <text x={x} y={y} textAnchor={anchor}>
      {children}
    </text>
  );
}

/** A resistor without its leads. */
const Resistor = ({ x, y, upright = false }: { x: number; y: number; upright?: boolean }) => (
  <path d={upright ? `M${x - 6} ${y - 16}h12v32h-12z` : `M${x - 16} ${y - 6}h32v12h-32z`} />
);

/** The plates of a capacitor on an upright wire. */
const Plates = ({ x, y }: { x: number; y: number }) => (
  <path d={`M${x - 11} ${y - 3}h22M${x - 11} ${y + 3}h22`} />
);

function Ground({ at, y }: { at: readonly number[]; y: number }) {
  return (
    <path
      d={at.map((x) => `M${x - 8} ${y}h16M${x - 5} ${y + 4}h10M${x - 2} ${y + 8}h4`).join('')}
    />
  );
}
