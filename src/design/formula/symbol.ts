import { type Box, number, row } from './box.ts';

const greek: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  epsilon: 'ε',
  zeta: 'ζ',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'µ',
  nu: 'ν',
  xi: 'ξ',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  chi: 'χ',
  psi: 'ψ',
  omega: 'ω',
  Gamma: 'Γ',
  Delta: 'Δ',
  Theta: 'Θ',
  Lambda: 'Λ',
  Sigma: 'Σ',
  Phi: 'Φ',
  Psi: 'Ψ',
  Omega: 'Ω',
};

/** A symbol's letter and its index, as printed: `L_m` → L, m; `omega_0` → ω, 0; `f0` → f, 0. */
export function symbolParts(name: string): { letter: string; index: string } {
  const [first = '', ...rest] = name.split('_');
  const [, stem = first, digits = ''] = /^(\p{L}+)(\d+)$/u.exec(first) ?? [];
  const parts = [digits, ...rest].filter((part) => part !== '');
  const index = parts.map((part) => spelt(part.replace(/^\{|\}$/g, ''))).join(' ');
  return { letter: spelt(stem), index };
}

/** A symbol set with its index low; π stands upright, as constants do. */
export function symbol(name: string): Box {
  if (name === 'pi') return { is: 'letter', text: 'π', upright: true };
  const { letter, index } = symbolParts(name);
  const base: Box = { is: 'letter', text: letter };
  return index === '' ? base : { is: 'index', base, index: row(...indexParts(index)) };
}

/** Indices are upright: they name things and are no quantities. */
function indexParts(index: string): Box[] {
  const digits = /^\d+$/.test(index);
  return [digits ? number(index) : { is: 'letter', text: index, upright: true }];
}

const spelt = (name: string): string => (Object.hasOwn(greek, name) ? (greek[name] ?? name) : name);
