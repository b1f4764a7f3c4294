import type { Palette } from './palette.js';

type Rule = readonly [selectors: readonly string[], declarations: string];

/** Lines and marks. Series hand their colour down as `color`, which every SVG renderer knows, unlike custom properties. */
const SHAPE_RULES: readonly Rule[] = [
  [['.mark'], 'fill:currentColor;stroke:currentColor;stroke-width:1'],
  [['.open'], 'stroke-width:1.6'],
  [['.curve'], 'fill:none;stroke:currentColor;stroke-width:1.6;stroke-linejoin:round'],
  [['.whisker'], 'fill:none;stroke:currentColor;stroke-width:1.5'],
  [['.leader'], 'fill:none;stroke:currentColor;stroke-width:.7;opacity:.75'],
  [['line.limit', 'circle.limit'], 'fill:none;stroke-width:1.3;stroke-dasharray:5 3'],
  [['line.reference'], 'stroke-width:1.2'],
  [['.limit-label', '.reference-label'], 'paint-order:stroke;stroke-width:5px;stroke-linejoin:round'],
  [['.heading'], 'font-weight:600'],
];

function colourRules({ paper, ink, soft, grid, limit, series }: Palette): readonly Rule[] {
  return [
    [['text'], `fill:${ink}`],
    [['.axis text'], `fill:${soft}`],
    [['.axis .axis-label'], `fill:${ink}`],
    [['.axis .base'], `stroke:${soft}`],
    [['.axis .grid'], `stroke:${grid}`],
    [['.reference'], `color:${ink}`],
    ...series.map((colour, i): Rule => [[`.colour-${i + 1}`], `color:${colour}`]),
    [['.open', '.paper'], `fill:${paper}`],
    [['line.limit', 'circle.limit'], `stroke:${limit}`],
    [['line.reference'], `stroke:${ink}`],
    [['.limit-label'], `fill:${limit}`],
    [['.limit-label', '.reference-label'], `stroke:${paper}`],
  ];
}

/** The style of lines, marks and text below `scope`, in any colours. */
export function chartShapes(scope: string): string {
  return written(scope, SHAPE_RULES);
}

/** The colours that go with {@link chartShapes}, to be written behind it. */
export function chartColours(scope: string, palette: Palette): string {
  return written(scope, colourRules(palette));
}

function written(scope: string, rules: readonly Rule[]): string {
  return rules
    .map(([selectors, declarations]) => `${selectors.map((one) => `${scope} ${one}`).join(',')}{${declarations}}`)
    .join('');
}
