import type { ReactNode } from 'react';
import { Letter } from './Letter.tsx';
import { Typeset } from './Typeset.tsx';
import { Value } from './Value.tsx';
import { words } from './words.ts';

export interface WhereItem {
  symbol: string;
  says: string;
  /** Figure and unit, ready to read. */
  value: string;
  /** Leads to the symbol's own step, or to the field where it was typed. */
  href?: string | undefined;
  onGo?: (() => void) | undefined;
}

export interface StepProps {
  id?: string;
  label: string;
  /** One sentence in plain words. */
  says: string;
  /** MathML: symbol = formula, and the same with numbers in it. */
  formula: string | null;
  /** In place of a formula: the rule by which a name was chosen. */
  rule?: string | undefined;
  /** What the formula leans on, each with its own. */
  steps?: readonly { symbol: string; says: string; formula: string; value: string }[] | undefined;
  numbers?: string | undefined;
  value: string;
  /** For a solved equation: the symbol that was sought. */
  root?: string | undefined;
  where: readonly WhereItem[];
  source: string;
  assumes?: string | undefined;
  /** For a solved equation: what is left when the root is put back. */
  residual?: string | undefined;
  children?: ReactNode;
}

/** One sum, as on the board: formula, the same with numbers, the answer; its source at the margin. */
export function Step(props: StepProps) {
  return (
    <section className="step" id={props.id} aria-label={words.workingsOf(props.label)}>
      <p className="step__says">{props.says}</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
      <section className="step__sum" aria-label={words.formulaOf} tabIndex={0}>
        {props.steps?.map((step) => (
          <div className="step__formula step__formula--sub" key={step.symbol} title={step.says}>
            <Typeset mathml={step.formula} />
            {step.value !== '' && (
              <>
                {' '}
                = <Value of={step.value} />
              </>
            )}
          </div>
        ))}
        {props.formula !== null && (
          <div className="step__formula">
            <Typeset mathml={props.formula} />
          </div>
        )}
        {props.rule !== undefined && <p className="step__rule">{props.rule}</p>}
        {props.numbers !== undefined && (
          <div className="step__numbers">
            <Typeset mathml={props.numbers} />
          </div>
        )}
        <div className="step__value">
          {props.root !== undefined && <Letter of={props.root} />} = <Value of={props.value} />
        </div>
        {props.residual !== undefined && <p className="step__residual">{props.residual}</p>}
      </section>
      {props.where.length > 0 && (
        <dl className="step__where" aria-label={words.where}>
          {props.where.map((item) => (
            <div key={item.symbol}>
              <dt>
                <Letter of={item.symbol} />
              </dt>
              <dd>
                {item.href === undefined ? (
                  item.says
                ) : (
                  <a href={item.href} onClick={item.onGo}>
                    {item.says}
                  </a>
                )}{' '}
                <Value of={item.value} />
              </dd>
            </div>
          ))}
        </dl>
      )}
      <div className="step__margin">
        <p>
          <b>{words.source}</b> {props.source}
        </p>
        {props.assumes !== undefined && (
          <p>
            <b>{words.assumes}</b> {props.assumes}
          </p>
        )}
      </div>
      {props.children}
    </section>
  );
}
