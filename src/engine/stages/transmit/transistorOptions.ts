import { transistors } from '../../data/devices.ts';

/** Transistors offered for small stages. */
export const smallTransistors = {
  n2222: transistors.n2222.name,
  n3904: transistors.n3904.name,
  c548: transistors.c548.name,
  d139: transistors.d139.name,
  own: 'My own',
} as const;

/** Transistors offered for the final. */
export const finalTransistors = {
  d139: transistors.d139.name,
  d137: transistors.d137.name,
  d135: transistors.d135.name,
  n3866: transistors.n3866.name,
  n2222: transistors.n2222.name,
} as const;
