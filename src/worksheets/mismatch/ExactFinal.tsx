import { memo } from 'react';
import { Table } from '../../design/Table.tsx';
import type {
  MismatchedAnswer,
  MismatchedPoint,
} from '../../engine/errands/mismatched/mismatchedAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { useErrand } from '../../store/errands.ts';
import { Errand } from '../bound/Errand.tsx';

/** Pause after the last change before the final is sent for, ms. */
const PAUSE = 700;

/** The same from the transistor's own model, at twelve angles. */
export function ExactFinal() {
  const errand = useErrand<MismatchedAnswer>('mismatched', { auto: PAUSE });
  const { answer } = errand;
  return (
    <>
      <Errand of={errand} what="The final from its transistor’s model" run="Work it exactly" />
      {answer && <p>{answer.says}</p>}
      {answer && answer.rounds.length > 0 && <ExactTable answer={answer} />}
    </>
  );
}

const ExactTable = memo(function ExactTable({ answer }: { answer: MismatchedAnswer }) {
  return (
    <Table
      caption="From the transistor’s model: the worst of twelve angles"
      narrow="scroll"
      columns={[
        { key: 'swr', label: 'SWR' },
        { key: 'voltage', label: 'Most collector voltage' },
        { key: 'power', label: 'Least power' },
        { key: 'heat', label: 'Most heat in a transistor' },
        { key: 'junction', label: 'Its junction, after minutes' },
        { key: 'margin', label: 'Least margin' },
      ]}
      rows={answer.rounds.flatMap(({ swr, worst }) =>
        worst === null
          ? []
          : [
              {
                key: String(swr),
                cells: {
                  swr: format(swr, '1', 3),
                  voltage: at(worst.voltage, format(worst.voltage.voltage, 'V', 3)),
                  power: at(worst.power, format(worst.power.power, 'W', 3)),
                  heat: at(worst.dissipation, format(worst.dissipation.dissipation, 'W', 3)),
                  junction: format(worst.dissipation.junction, '°C', 2),
                  margin: `${format(worst.margin.margin, 'dB', 3)} at ${worst.margin.order}f, ${degrees(worst.margin)}`,
                },
              },
            ],
      )}
    />
  );
});

const degrees = ({ angle }: MismatchedPoint) => format(angle, '°', 2);

const at = (point: MismatchedPoint, text: string) => `${text} at ${degrees(point)}`;
