export { toCsv } from './csv.js';
export { renderHtml } from './html/page.js';
export { renderMarkdown } from './markdown.js';
export { type RenderInspectionOptions, renderInspection } from './text/render-inspection.js';
export { type RenderTextOptions, renderText } from './text/render-text.js';
