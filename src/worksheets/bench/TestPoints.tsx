import { TestPoint } from './TestPoint.tsx';
import { pointsBetween } from './useTestPoint.ts';
import './bench.css';

interface TestPointsProps {
  /** Names the part of the work. */
  caption: string;
  /** Steps of the work, both ends included. */
  from: number;
  to: number;
}

/** One part of the work as a form: what to expect at each place, a line for the reading, the verdict. */
export function TestPoints({ caption, from, to }: TestPointsProps) {
  return (
    <table className="table table--stack points">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col" data-as="words">
            Test point
          </th>
          <th scope="col" data-as="words">
            Expected
          </th>
          <th scope="col" data-as="words">
            Measured
          </th>
          <th scope="col" data-as="words">
            Verdict
          </th>
        </tr>
      </thead>
      {pointsBetween(from, to).map((point) => (
        <TestPoint key={`${point.group}.${point.point}`} point={point} />
      ))}
    </table>
  );
}
