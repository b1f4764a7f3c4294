import { readFileSync } from 'node:fs';
import { createSpectrum } from '../../src/colorimetry/index.js';
import type { ChartDrawdown } from '../../src/strength/index.js';

/** A measured paint: its parts in mass %, and its drawdown over black and white with the bare fields. */
export interface OilPaint {
  readonly name: string;
  readonly parts: ReadonlyMap<string, number>;
  readonly drawdown: Required<Omit<ChartDrawdown, 'thickness'>>;
}

const READINGS = ['over-black', 'over-white', 'bare-black', 'bare-white'];

/** The measured oil paints of `oil-paints.txt`, which names its source. */
export const OIL_PAINTS: ReadonlyMap<string, OilPaint> = new Map(
  readFileSync(new URL('oil-paints.txt', import.meta.url), 'utf8')
    .split('\n\n')
    .slice(1)
    .map((block) => {
      const rows = new Map(
        block
          .trim()
          .split('\n')
          .map((line) => [line.split(' ', 1)[0], line.split(' ').slice(1)]),
      );
      const row = (label: string) => rows.get(label) ?? [];
      const spectrum = (label: string) =>
        createSpectrum({ start: 400, step: 10, values: row(label).map(Number), scale: 'percent' });
      const [overBlack, overWhite, black, white] = READINGS.map(spectrum);
      const parts = row('parts');
      const names = parts.filter((_, i) => i % 2 === 0);
      const [name] = row('paint');
      return [
        name,
        {
          name,
          parts: new Map(names.map((part, i) => [part, Number(parts[2 * i + 1])])),
          drawdown: { overBlack, overWhite, black, white },
        },
      ];
    }),
);

/** The paint of a name. */
export function oilPaint(name: string): OilPaint {
  const paint = OIL_PAINTS.get(name);
  if (!paint) throw new Error(`no paint ${name}`);
  return paint;
}
