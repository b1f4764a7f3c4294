import type { ConditionPart } from './stated-parts.js';

const WORDS: readonly (readonly [ConditionPart, ReadonlySet<string>])[] = [
  [
    'illuminant',
    new Set('illuminant illuminants illumination lichtart normlichtart iluminante illuminante éclairant'.split(' ')),
  ],
  [
    'observer',
    new Set('observer observers obs beobachter normalbeobachter observateur observador osservatore'.split(' ')),
  ],
  ['specular', new Set('specular gloss glanz glanzanteil glanzkomponente spéculaire especular speculare'.split(' '))],
  ['geometry', new Set('geometry geometrie messgeometrie géométrie geometría geometria'.split(' '))],
  [
    'instrument',
    new Set(
      'instrument instrumentation device spectrophotometer spectrometer gerät messgerät appareil spectrophotomètre instrumento strumento'.split(
        ' ',
      ),
    ),
  ],
  ['session', new Set('session sitzung séance sesión sessione'.split(' '))],
  ['bandPass', new Set(['bandpass'])],
];
const FILLERS = new Set(
  (
    'name angle standard type measurement measuring meas mode component comp reference cie setting settings condition conditions viewing used and und et ' +
    'reflection modus winkel messung der des de du model system treatment'
  ).split(' '),
);

/** The parts that a key or a column heading names, such as `Illuminant/Observer`, `OBSERVER_ANGLE` or `Normalbeobachter`; none where it says anything else. */
export function conditionKey(key: string): readonly ConditionPart[] {
  if (key.length > 60) return [];
  const words = key
    .toLowerCase()
    .replace(/band[\s_-]?pass(?:[\s_-]corrections?)?/, 'bandpass')
    .replace(/light source|source de lumière|lichtquelle/, 'illuminant')
    .split(/[^\p{L}]+/u)
    .filter((word) => word !== '');
  if (words.includes('viewing') && words.every((word) => FILLERS.has(word))) return ['illuminant', 'observer'];
  const parts = new Set<ConditionPart>();
  for (const word of words) {
    const found = WORDS.find(([, names]) => names.has(word));
    if (found) parts.add(found[0]);
    else if (!FILLERS.has(word)) return [];
  }
  return [...parts];
}
