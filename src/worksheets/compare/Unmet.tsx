import type { CompareAnswer } from '../../engine/errands/compare/compareAnswer.ts';

/** What is wrong with a filter, where something is. */
export function Unmet({ answer }: { answer: CompareAnswer }) {
  const lines = answer.filters.flatMap(({ variant, says }) =>
    says.map((one) => ({ key: `${variant.name} ${one}`, name: variant.name, says: one })),
  );
  return lines.map(({ key, name, says }) => (
    <p key={key}>
      <strong>Filter {name}.</strong> {says}
    </p>
  ));
}
