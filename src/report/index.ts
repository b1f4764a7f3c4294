export type { ChartText } from './charts/chart-image.js';
export { type IntervalChart, type IntervalRow, intervalChart } from './charts/interval-chart.js';
export { type LineChart, type LineSeries, lineChart } from './charts/line-chart.js';
export type { ReferenceLine } from './charts/reference-line.js';
export { type RubOutPlane, type RubOutPoint, rubOutPlane } from './charts/rub-out-plane.js';
export { toCsv } from './csv.js';
export { renderHtml } from './render-html.js';
export { renderMarkdown } from './render-markdown.js';
export { type RenderTextOptions, renderText } from './render-text.js';
export { REPORT_LENGTHS, type ReportLength, type ReportOptions } from './sections/study-document.js';
export type { ReportIdentity } from './subject/report-identity.js';
export { type RenderInspectionOptions, renderInspection } from './text/render-inspection.js';
export {
  CAUSE_STANDING_WORDS,
  CRITERION_WORDS,
  FINDING_WORDS,
  OUTCOME_WORDS,
  RUB_OUT_CAUSE_WORDS,
  RUB_OUT_DIRECTION_WORDS,
  RUB_OUT_FINDING_WORDS,
} from './words/words.js';
