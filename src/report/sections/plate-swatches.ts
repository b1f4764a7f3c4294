import { type Lab, srgbSwatch, type Viewing } from '../../colorimetry/index.js';
import { formatFixed } from '../../core/internal.js';
import type { Cell } from '../../study/index.js';
import type { Chart } from '../charts/chart.js';

type Named = readonly [label: string, lab: Lab];

/** Swatches of a cell: unrubbed beside rubbed, and reference, trial and the trial brought to its strength. */
export function swatchChart(id: string, where: string, cell: Cell, viewing: Viewing): Chart {
  const rows = swatchRows(cell);
  const described = rows.flat().map(([name, lab]) => `${name} ${labWords(lab)}`);
  return {
    id,
    title: `Swatches of ${where}`,
    description: `${[...new Set(described)].join('; ')}.`,
    plot: {
      kind: 'swatches',
      rows: rows.map((row) => row.map(([label, lab]) => ({ label, colour: srgbSwatch(lab, viewing).hex }))),
    },
  };
}

function swatchRows({ colours, strength }: Cell): Named[][] {
  const { reference, unrubbed, rubbed, matched } = colours;
  const areas: Named[] = [['unrubbed', unrubbed], ...(rubbed ? [['rubbed', rubbed] as const] : [])];
  const compared: Named[] = [
    ['reference', reference],
    ['trial', unrubbed],
    ...(matched ? [['matched', matched] as const] : []),
  ];
  return [...(rubbed || !strength ? [areas] : []), ...(strength ? [compared] : [])];
}

function labWords({ L, a, b }: Lab): string {
  return `L* ${formatFixed(L, 2)}, a* ${formatFixed(a, 2)}, b* ${formatFixed(b, 2)}`;
}
