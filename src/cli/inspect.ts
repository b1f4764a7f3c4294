import { renderInspection } from '../report/index.js';
import { exportPaths } from './export-paths.js';
import { readWhole } from './read-export.js';
import { TERMINAL } from './terminal.js';

/** `tintladder inspect`: shows what is in exports. */
export async function inspect(paths: readonly string[], { json }: { readonly json?: boolean }): Promise<void> {
  const files = paths.flatMap((path) => exportPaths(path));
  for (const [index, file] of files.entries()) {
    const read = await readWhole(file);
    if (json) process.stdout.write(`${JSON.stringify({ file, ...read })}\n`);
    else {
      if (files.length > 1) process.stdout.write(`${index > 0 ? '\n' : ''}${file}: `);
      process.stdout.write(renderInspection(read, { colour: TERMINAL.colour }));
    }
  }
}
