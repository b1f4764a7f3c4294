const PREFIXES: Readonly<Record<string, number>> = {
  k: 1e3,
  '': 1,
  d: 1e-1,
  c: 1e-2,
  m: 1e-3,
  µ: 1e-6,
  μ: 1e-6,
  u: 1e-6,
  n: 1e-9,
};

/** Units that are written with prefixes, by their size in the first of each kind. */
const BASES: Readonly<Record<string, readonly [kind: string, size: number]>> = {
  Pa·s: ['viscosity', 1],
  P: ['viscosity', 0.1],
  m: ['length', 1],
  g: ['mass', 1],
  l: ['volume', 1],
  L: ['volume', 1],
  Pa: ['pressure', 1],
  N: ['force', 1],
  J: ['energy', 1],
  s: ['time', 1],
  min: ['time', 60],
  h: ['time', 3600],
};

/**
 * By what a figure is multiplied to bring it from one unit to another: 1 for the same unit, 1000 from Pa·s to mPa·s.
 *
 * @returns undefined where the two are no units of one kind, as far as is known here
 * @see SI brochure, 9th edition, table 7, for the prefixes
 */
export function conversionFactor(from: string, to: string): number | undefined {
  if (from === to) return 1;
  const [own, other] = [sizeOf(from), sizeOf(to)];
  // a quotient of two powers of ten is not always the power of ten that it stands for
  return own && other && own.kind === other.kind ? Number((own.size / other.size).toPrecision(12)) : undefined;
}

function sizeOf(unit: string): { readonly kind: string; readonly size: number } | undefined {
  const plain = unit.replace(/\s*[·*⋅ ]\s*/g, '·').replace(/Pas$/, 'Pa·s');
  for (const [base, [kind, size]] of Object.entries(BASES)) {
    if (!plain.endsWith(base)) continue;
    const prefix = plain.slice(0, plain.length - base.length);
    if (Object.hasOwn(PREFIXES, prefix)) return { kind, size: size * PREFIXES[prefix] };
  }
  return undefined;
}
