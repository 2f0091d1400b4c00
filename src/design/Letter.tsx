const greek: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  Delta: 'Δ',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'μ',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  Phi: 'Φ',
  psi: 'ψ',
  omega: 'ω',
  Omega: 'Ω',
};

const spelt = (name: string) => greek[name] ?? name;

/** A quantity's symbol as the trade prints it: `L_m` with its index low, `omega` as a letter. */
export function Letter({ of }: { of: string }) {
  const [base = '', ...rest] = of.split('_');
  const index = rest.join(' ').replace(/^\{|\}$/g, '');
  return (
    <span className="letter">
      <i>{spelt(base)}</i>
      {index !== '' && <sub>{spelt(index)}</sub>}
    </span>
  );
}
