/** Heat sinks that a junk box holds, K/W in free air, from the largest. From memory, ±20 %. */
export const heatSinks = [
  { title: 'a ribbed block of 100 × 80 × 30 mm', resistance: 2 },
  { title: 'a ribbed block of 50 × 50 × 25 mm', resistance: 4.5 },
  { title: 'an aluminium sheet of 100 × 100 × 2 mm, upright', resistance: 5.5 },
  { title: 'the wall of a small aluminium case, some 60 × 80 mm', resistance: 8 },
  { title: 'a folded fin for TO-220, 25 mm high', resistance: 14 },
  { title: 'a small clip for TO-220', resistance: 22 },
  { title: 'a star pressed over a TO-39 case', resistance: 40 },
] as const;
