/** `2.40 kHz` cut into figure and unit, so that each can have its own weight. */
export function figureAndUnit(text: string): readonly [string, string] {
  const found = /^([−+-]?[\d.,'’ \u2009\u202f]*\d)[\s\u00a0\u2009\u202f]*(\D.*)?$/u.exec(text);
  return found?.[1] === undefined ? [text, ''] : [found[1], found[2] ?? ''];
}

/** A figure with its unit, typeset: tabular figures, the unit lighter and never on its own line. */
export function Value({ of, unit }: { of: string; unit?: string | undefined }) {
  const [figure, own] = unit === undefined ? figureAndUnit(of) : ([of, unit] as const);
  return (
    <span className="value">
      <span className="value__figure">{figure}</span>
      {own !== '' && <span className="value__unit">&nbsp;{own}</span>}
    </span>
  );
}
