import { memo } from 'react';
import { Button } from '../../design/Button.tsx';
import { Table } from '../../design/Table.tsx';
import type { Offered, Selection } from '../../engine/errands/choose/answer.ts';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';

/** What is offered, against the closest neighbours; and the word that takes it. */
export const Offer = memo(function Offer({ selection }: { selection: Selection }) {
  const { chosen, closest, carrier, heldBack, left, looks } = selection;
  const inFilter = useValue<string>('filter.chosen');
  const forCarrier = useValue<string>('carrier.chosen');
  const sayAll = useBench((s) => s.sayAll);
  const [filterText, carrierText] = [chosen.labels.join(' '), carrier?.labels.join(' ') ?? ''];
  const taken = inFilter === filterText && (forCarrier ?? '') === carrierText;
  const same = filterText === closest.labels.join(' ');
  return (
    <>
      <p className="offer__order">
        source <strong>{chosen.labels.join(' · ')}</strong> load
        {carrier && (
          <>
            , carrier <strong>{carrier.labels.join(' and ')}</strong>
          </>
        )}
      </p>
      <p>
        {taken ? (
          'This choice is taken: filter and carrier are worked with it.'
        ) : (
          <Button
            kind="strong"
            onPress={() =>
              sayAll(
                { 'filter.chosen': filterText, 'carrier.chosen': carrierText },
                'Crystals chosen',
              )
            }
          >
            Take this choice
          </Button>
        )}
      </p>
      <Table
        caption={
          same
            ? 'The closest neighbours themselves are best'
            : `Chosen, of ${looks.toLocaleString('en').replaceAll(',', ' ')} arrangements`
        }
        narrow="stack"
        columns={[
          { key: 'what', label: 'Figure', as: 'words' },
          { key: 'chosen', label: 'Chosen' },
          { key: 'closest', label: 'Closest, by frequency' },
        ]}
        rows={figures.map(({ what, of }) => ({
          key: what,
          cells: { what, chosen: of(chosen), closest: of(closest) },
        }))}
      />
      {carrier && <p>{carrierWords(carrier)}</p>}
      {heldBack.length > 0 && (
        <p>
          {heldBack.join(' and ')} was kept back for the carrier: without it none could be pulled
          there.
        </p>
      )}
      {!carrier && <p>For the carrier none is left that can be used.</p>}
      <p>{left.length === 0 ? 'None is left over.' : `Left over: ${left.join(', ')}.`}</p>
    </>
  );
});

const figures: readonly { what: string; of: (one: Offered) => string }[] = [
  { what: 'Ripple', of: ({ ripple }) => format(ripple, 'dB', 4) },
  { what: 'Fall over the middle', of: ({ fall }) => format(fall, 'dB', 4) },
  { what: 'Width at −3 dB', of: ({ width }) => format(width, 'Hz', 4) },
  { what: 'Loss', of: ({ loss }) => format(loss, 'dB', 4) },
  { what: 'Crystals lie within', of: ({ within }) => format(within, 'Hz', 3) },
  { what: 'Aligning capacitors', of: ({ capacitors }) => String(capacitors) },
  { what: 'The figure made least', of: ({ merit }) => format(merit, 'dB', 5) },
  { what: 'From source to load', of: ({ labels }) => labels.join(' ') },
];

function carrierWords({
  labels,
  frequency,
  pull,
  reaches,
  furthest,
}: NonNullable<Selection['carrier']>): string {
  const who = labels.length > 1 ? `${labels.join(' and ')} side by side` : `Crystal ${labels[0]}`;
  const way = pull > 0 ? 'up by a capacitor' : 'down by a coil';
  const by = format(Math.abs(pull), 'Hz', 3);
  return reaches
    ? `${who} makes the carrier at ${format(frequency, 'Hz', 7)}: pulled ${by} ${way}, the least of those that are left.`
    : `${who} comes nearest, but reaches only ${format(furthest, 'Hz', 7)} of the ${format(frequency, 'Hz', 7)} wanted.`;
}
