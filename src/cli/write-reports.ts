import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type ReportOptions, renderHtml, renderMarkdown, toCsv } from '../report/index.js';
import type { StudyResult } from '../study/index.js';
import { onFile } from './command-problem.js';

/**
 * Writes a result into a folder as HTML, Markdown, CSV and JSON: all of them or none.
 *
 * @param name - of the files, without ending
 * @param options - how much HTML and Markdown hold, and where the report comes from
 * @returns path of the HTML report
 */
export function writeReports(result: StudyResult, folder: string, name: string, options: ReportOptions): string {
  const reports = {
    html: renderHtml(result, options),
    md: renderMarkdown(result, options),
    csv: toCsv(result),
    json: `${JSON.stringify(result, undefined, 1)}\n`,
  };
  const written: string[] = [];
  onFile('write', folder, () => {
    try {
      mkdirSync(folder, { recursive: true });
      for (const [ending, text] of Object.entries(reports)) {
        const path = join(folder, `${name}.${ending}`);
        writeFileSync(`${path}.part`, text);
        written.push(path);
      }
      for (const path of written) renameSync(`${path}.part`, path);
    } catch (error) {
      for (const path of written) rmSync(`${path}.part`, { force: true });
      throw error;
    }
  });
  return join(folder, `${name}.html`);
}
