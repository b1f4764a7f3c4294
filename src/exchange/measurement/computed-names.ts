const STATISTIC =
  /^(?:avg|average|mean|arithmetic mean|min|minimum|max|maximum|median|range|std\.? ?dev|std|stdev|standard deviation|st\.? ?dev\.?|sd|s\.d\.|cv|cv ?%|% ?cv|rsd|rsd ?%|variance|var|coefficient of variation|mittelwert|mittel|durchschnitt|standardabweichung|moyenne|écart[- ]type|media|promedio|desviación estándar|deviazione standard|[σμ]|x̄)(?: \(?(?:n ?= ?)?\d+\)?)?\.?:?$/i;
const DIFFERENCE =
  /^(?:diff|difference|delta|Δ|differenz|différence|diferencia|differenza|sample ?[-–−] ?(?:standard|reference))\.?:?$/iu;
/** A colour difference by its symbol; `De` and `de` begin words. */
const DIFFERENCE_SYMBOL = /^(?:Δ|d|[Dd]elta ?)E(?![a-z])/u;

/** Whether a name is that of a row computed from others, and of which kind. */
export function computedRow(name: string): 'statistic' | 'difference' | undefined {
  if (name.length > 40) return undefined;
  const text = name.trim();
  return STATISTIC.test(text)
    ? 'statistic'
    : DIFFERENCE.test(text) || DIFFERENCE_SYMBOL.test(text)
      ? 'difference'
      : undefined;
}

/** Whether a name would be taken for that of a row computed from others. */
export function isComputedName(name: string): boolean {
  return computedRow(name) !== undefined;
}
