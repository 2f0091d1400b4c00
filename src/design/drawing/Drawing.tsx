import type { CSSProperties } from 'react';
import type { Outcome } from '../marks.ts';
import { VerdictMark } from '../Verdict.tsx';
import { words } from '../words.ts';
import { RigPicture } from './RigPicture.tsx';
import { RigTile } from './RigTile.tsx';

export interface DrawnBlock {
  key: string;
  label: string;
  /** Key figures, ready to read; two at most. */
  figures: readonly string[];
  state: Outcome;
  /** True where the last change moved one of its figures. */
  moved?: boolean;
}

interface DrawingProps {
  blocks: readonly DrawnBlock[];
  current: string;
  onChoose: (key: string) => void;
  hrefOf?: (key: string) => string;
}

/** The order along the wire; stages that the drawing does not know come last. */
const alongTheWire = [
  'plan',
  'receive',
  'carrier',
  'quartz',
  'filter',
  'transmit',
  'windings',
  'output',
  'path',
  'bench',
];

const rank = (key: string) => (alongTheWire.indexOf(key) + 100) % 100;

/** The rig's signal path, both ways, as the way around: each stage leads to its worksheet. */
export function Drawing({ blocks, current, onChoose, hrefOf = (key) => `#${key}` }: DrawingProps) {
  const ordered = [...blocks].sort((a, b) => rank(a.key) - rank(b.key));
  const at = ordered.findIndex((block) => block.key === current);
  const place = { '--at': at, '--of': ordered.length } as CSSProperties;
  return (
    <nav className="drawing" aria-label={words.wayAround}>
      <RigPicture blocks={blocks} current={current} onChoose={onChoose} />
      <ol className="drawing__stages" style={place} data-any={at >= 0}>
        {ordered.map((block) => (
          <li key={block.key}>
            <a
              className="drawing__stage"
              href={hrefOf(block.key)}
              aria-current={block.key === current ? 'page' : undefined}
              data-state={block.state}
              data-moved={block.moved ?? false}
              onClick={(event) => {
                if (event.metaKey || event.ctrlKey || event.shiftKey) return;
                event.preventDefault();
                onChoose(block.key);
              }}
            >
              <RigTile of={block.key} />
              <span className="drawing__words">
                <span className="drawing__label">
                  {block.label}
                  {block.state !== 'holds' && <VerdictMark of={block.state} />}
                  <span className="unseen">
                    {' '}
                    {words.outcome[block.state]}
                    {block.moved && `, ${words.moved}`}.
                  </span>
                </span>
                {block.figures.map((figure) => (
                  <span className="drawing__figure" key={figure}>
                    {figure}
                  </span>
                ))}
              </span>
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}
