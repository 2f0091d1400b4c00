import { Coil, SeriesCapacitor, ShuntCapacitor, Transformer } from './symbols.tsx';
import './winding.css';

export interface NetworkPart {
  key: string;
  /** `C1` */
  label: string;
  /** `360 pF`, ready to read. */
  value: string;
  kind: 'start' | 'shuntCapacitor' | 'coil' | 'trap' | 'transformer' | 'end';
  /** A second line under the value: what lies across the coil of a trap, and what it stops. */
  also?: readonly string[];
}

const symbols = {
  shuntCapacitor: (
    <>
      <path d="M0 20h72" />
      <ShuntCapacitor x={36} y={20} />
    </>
  ),
  coil: (
    <>
      <path d="M0 20h14M58 20h14" />
      <g className="wire">
        <Coil x={36} y={20} />
      </g>
    </>
  ),
  trap: (
    <>
      <path d="M0 20h14M58 20h14M10 20v26h4M62 20v26h-4" />
      <circle className="dot" cx={10} cy={20} r={1.6} />
      <circle className="dot" cx={62} cy={20} r={1.6} />
      <g className="wire">
        <Coil x={36} y={20} />
      </g>
      <SeriesCapacitor x={36} y={46} />
    </>
  ),
  transformer: (
    <>
      <path d="M0 20h28M44 20h28M28 50v6M22 56h12M44 50v6M38 56h12" />
      <Transformer x={36} y={35} />
    </>
  ),
  start: (
    <>
      <path d="M36 20h36" />
      <circle className="body" cx={36} cy={20} r={3.2} />
    </>
  ),
  end: (
    <>
      <path d="M0 20h36" />
      <circle className="body" cx={36} cy={20} r={3.2} />
    </>
  ),
} as const;

/** The network as it is wired, part after part along one wire that goes on in the next line. */
export function NetworkDrawing({ label, parts }: { label: string; parts: readonly NetworkPart[] }) {
  return (
    <ol className="network" aria-label={label}>
      {parts.map((part) => (
        <li key={part.key} className="network__part">
          <svg className="network__symbol" viewBox="0 0 72 62" aria-hidden="true">
            {symbols[part.kind]}
          </svg>
          <span className="network__label">{part.label}</span>
          <span className="network__value">{part.value}</span>
          {part.also?.map((line) => (
            <span key={line} className="network__value">
              {line}
            </span>
          ))}
        </li>
      ))}
    </ol>
  );
}
