/** A formula in MathML, made by the project's own typesetter from one expression. */
export function Typeset({ mathml }: { mathml: string }) {
  return (
    <span
      className="typeset"
      // biome-ignore lint/security/noDangerouslySetInnerHtml: MathML is made here, never typed in
      dangerouslySetInnerHTML={{ __html: mathml }}
    />
  );
}
