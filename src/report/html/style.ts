import { chartColours, chartShapes } from '../charts/chart-style.js';
import { DARK, LIGHT, type Palette, SANS } from '../charts/palette.js';

/** The colours that page and charts share, as the page names them. */
const VARIABLES: Palette = {
  paper: 'var(--paper)',
  ink: 'var(--ink)',
  soft: 'var(--soft)',
  grid: 'var(--grid)',
  limit: 'var(--fails)',
  series: LIGHT.series.map((_, i) => `var(--c${i + 1})`),
};

function variables({ paper, ink, soft, grid, limit, series }: Palette): string {
  const named = { paper, ink, soft, grid, fails: limit };
  return [
    ...Object.entries(named).map(([name, colour]) => `--${name}:${colour}`),
    ...series.map((colour, i) => `--c${i + 1}:${colour}`),
  ].join(';');
}

/**
 * The style of the page. Colours are named once for light and once for dark; paper is always light.
 *
 * Narrow screens turn tables into lists, each cell behind the heading of its column, so that nothing scrolls sideways.
 */
export const STYLE = `
:root{${variables(LIGHT)};--rule:#c6c9cd;--tint:#f4f5f6;--meets:#17653a;--undecided:#735200;
--sans:${SANS};
--serif:Charter,"Bitstream Charter",Cambria,Georgia,"Liberation Serif",serif}
@media screen and (prefers-color-scheme:dark){:root{${variables(DARK)};--rule:#44494f;--tint:#1e2125;--meets:#7ed0a0;--undecided:#e6c163}}
*{box-sizing:border-box}
html{background:var(--paper);color:var(--ink);font:17px/1.5 var(--serif);-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0 auto;max-width:68rem;padding:2.5rem 1.5rem 3rem;overflow-wrap:anywhere}
h1{font-size:1.75rem;line-height:1.2;margin:0 0 .5rem;font-weight:600}
h2{font-size:1.2rem;line-height:1.3;margin:2.75rem 0 .75rem;padding-top:.6rem;border-top:1px solid var(--ink);font-weight:600}
h3{font-size:1rem;margin:1.25rem 0 .25rem;font-weight:600}
p,ul{margin:.5rem 0;max-width:44rem}
ul{padding-left:1.2rem}
li{margin:.2rem 0}
.note{color:var(--soft);font-style:italic}
.answer{font-size:1.35rem;line-height:1.4;max-width:52rem;margin:.75rem 0 0}
header+main>section:first-child>h2{position:absolute;width:1px;height:1px;margin:0;padding:0;overflow:hidden;clip-path:inset(50%)}
nav ul{list-style:none;padding:0;margin:0;max-width:none;display:flex;flex-wrap:wrap;gap:.2rem 1.25rem}
nav{font-family:var(--sans);font-size:.82rem}
a{color:inherit;text-underline-offset:.15em}
a:focus-visible{outline:2px solid;outline-offset:2px}
table,figcaption,svg,.key,.panel-heading,footer{font-family:var(--sans)}
table{width:100%;border-collapse:collapse;margin:1rem 0 1.5rem;font-size:.82rem;line-height:1.4;font-variant-numeric:tabular-nums lining-nums;border-bottom:1px solid var(--ink)}
caption,figcaption{text-align:left;font-size:.82rem;line-height:1.4;color:var(--soft);margin-bottom:.5rem;max-width:48rem}
body{counter-reset:table figure}
caption{counter-increment:table;padding-bottom:.5rem}
caption::before{content:"Table " counter(table) ". ";color:var(--ink);font-weight:600}
.panels>figcaption{counter-increment:figure}
.panels>figcaption::before{content:"Figure " counter(figure) ". ";color:var(--ink);font-weight:600}
th,td{text-align:left;vertical-align:top;padding:.32rem .7rem .32rem 0;font-weight:400}
th:last-child,td:last-child{padding-right:0}
thead th{vertical-align:bottom;font-weight:600;border-top:1px solid var(--ink);border-bottom:1px solid var(--ink)}
tbody tr+tr>*{border-top:1px solid var(--grid)}
tbody+tbody tr:first-child>*{border-top:1px solid var(--rule)}
tbody th{min-width:8.5rem}
.group th{font-weight:600;padding-top:.7rem}
.numeric{text-align:right}
.numeric+:not(.numeric){padding-left:.9rem}
thead th{overflow-wrap:break-word}
td.numeric{white-space:nowrap}
.matrix{font-size:.95rem;line-height:1.45;table-layout:fixed}
.matrix.dense{font-size:.82rem}
.matrix th,.matrix td{padding-top:.5rem;padding-bottom:.5rem}
.matrix thead th{padding-top:.4rem;padding-bottom:.4rem}
.matrix tbody th{font-weight:600}
.matrix .outcome{font-size:1.1em}
.matrix .line,.matrix .remark{display:block}
.matrix .remark{font-size:.88em}
.matrix .label{color:var(--soft);font-size:.88em}
.unbroken{white-space:nowrap}
.matrix thead th:nth-child(-n+2){width:9.5rem}
.matrix.dense thead th:nth-child(-n+2){width:7rem}
.matrix b{font-weight:600}
.matrix caption{caption-side:bottom;padding:.5rem 0 0}
.aside{display:block;font-weight:400;color:var(--soft);font-size:.92em}
.outcome{font-weight:600;white-space:nowrap}
.aside .outcome{font-weight:400}
.meets{color:var(--meets)}.fails{color:var(--fails)}.undecided{color:var(--undecided)}
figure{margin:1rem 0 1.75rem}
.grid{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,19.5rem),1fr));gap:1.25rem 1.5rem;align-items:start}
.panel-heading{margin:0 0 .2rem;font-size:.85rem;font-weight:600}
svg{display:block;width:100%;max-width:25rem;height:auto;font-size:12px;font-variant-numeric:tabular-nums lining-nums;overflow:visible}
${chartShapes('svg')}${chartColours('svg', VARIABLES)}
.key{list-style:none;padding:0;max-width:none;display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,19.5rem),1fr));gap:.4rem 1.5rem;font-size:.82rem;line-height:1.4}
.key li{display:flex;gap:.6rem;margin:0}
.key svg{width:40px;height:14px;flex:none;margin-top:.2rem}
.plate{border-top:1px solid var(--grid);padding-top:.75rem;margin:0 0 1.25rem}
.plate>figcaption{color:var(--ink);font-weight:600}
.plate-grid{display:grid;grid-template-columns:10fr 16fr 16fr;gap:1rem 1.5rem;align-items:start}
footer{margin-top:3rem;padding-top:.6rem;border-top:1px solid var(--rule);font-size:.78rem;color:var(--soft)}
@media screen and (max-width:47rem){
html{font-size:16px}
body{padding:1.25rem 1rem 2rem}
h1{font-size:1.4rem}
thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
table,caption,tbody,tr,th,td{display:block}
table{font-size:.88rem}
tbody tr+tr>*,tbody+tbody tr:first-child>*{border-top:0}
tbody tr{border-top:1px solid var(--rule);padding:.45rem 0}
th,td,.group th,.numeric+:not(.numeric){padding:.08rem 0}
td.missing{display:none!important}
.compact tr:not(.group){display:flex;flex-wrap:wrap;gap:0 1rem}
.compact tbody th{flex:0 0 100%}
.compact td,.compact td.numeric{display:block;flex:0 0 6.6rem}
tbody th{font-weight:600;min-width:0}
.group{background:var(--tint);border-top:1px solid var(--ink)}
.group th{padding:.1rem .4rem}
td,td.numeric{display:grid;grid-template-columns:9.5rem 1fr;gap:0 .6rem;text-align:left;white-space:normal}
td::before{content:attr(data-label);color:var(--soft);grid-row:span 3}
.compact td::before{margin-right:.35em}
td>*{grid-column:2}
.plate-grid{grid-template-columns:1fr}
.plate-grid svg:first-child{max-width:15rem}
}
@page{margin:14mm 14mm 16mm}
@media print{
html{font-size:10.5pt}
body{padding:0;max-width:none}
nav{display:none}
.answer{font-size:13pt}
.matrix{font-size:9.5pt}.matrix.dense{font-size:8.5pt}
.matrix thead th:nth-child(-n+2){width:27mm}.matrix.dense thead th:nth-child(-n+2){width:22mm}
.dense th,.dense td{padding-right:.35rem}
.matrix th,.matrix td{padding-top:1.5mm;padding-bottom:1.5mm}
h1{font-size:17pt}h2{font-size:12.5pt;margin-top:7mm}
h2,h3,h2+p,caption,figcaption,.panel-heading{break-after:avoid}
.panels,.panel,.plate,.part,figcaption,caption,tr,li,.key{break-inside:avoid}
thead{display:table-header-group;break-after:avoid}
p,li{orphans:3;widows:3}
.grid{grid-template-columns:1fr 1fr}
.group{break-after:avoid}
.key{grid-template-columns:1fr 1fr}
table{font-size:8pt}
caption,figcaption{font-size:8pt}
}
`
  .replaceAll(/\n/g, '')
  .trim();
