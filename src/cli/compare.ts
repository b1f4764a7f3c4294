import { readFileSync } from 'node:fs';
import { basename, dirname, isAbsolute, relative, resolve } from 'node:path';
import { parse as parseYaml } from 'yaml';
import { TintladderError } from '../core/index.js';
import { type ReportIdentity, type ReportLength, renderText } from '../report/index.js';
import { evaluateStudy, parseStudy } from '../study/index.js';
import { onFile } from './command-problem.js';
import { assertExitFor, type ExitFor, exitCodeFor } from './exit-for.js';
import { exportPaths, STANDARD_INPUT } from './export-paths.js';
import { inputDigest } from './input-digest.js';
import { type Export, inFile, readExport } from './read-export.js';
import { TERMINAL } from './terminal.js';
import { VERSION } from './version.js';
import { writeReports } from './write-reports.js';

interface CompareOptions {
  readonly out?: string;
  readonly report: ReportLength;
  readonly json?: boolean;
  readonly quiet?: boolean;
  readonly exitFor: ExitFor;
}

/** `tintladder compare`: evaluates a study and prints its answer. */
export async function compare(path: string, options: CompareOptions): Promise<void> {
  const { out, json, quiet, exitFor } = options;
  const text = onFile('read', path, () => readFileSync(path === STANDARD_INPUT ? process.stdin.fd : path, 'utf8'));
  const study = await inFile(path, () => parseStudy(dataOf(text)));
  assertExitFor(exitFor, study);
  const folder = path === STANDARD_INPUT ? '' : dirname(path);
  const exports: Export[] = [];
  const files = path === STANDARD_INPUT ? [] : [path];
  for (const entry of study.measurements ?? []) {
    const { file, ...options } = typeof entry === 'string' ? { file: entry } : entry;
    const place = isAbsolute(file) ? file : relative('', resolve(folder, file));
    for (const one of exportPaths(place)) {
      exports.push(await readExport(one, options));
      files.push(one);
    }
  }
  const found = await evaluateStudy(
    study,
    exports.flatMap(({ measurements }) => measurements),
  );
  const result = { ...found, warnings: [...exports.flatMap(({ warnings }) => warnings), ...found.warnings] };
  const exitCode = exitCodeFor(result, exitFor);
  const name = path === STANDARD_INPUT ? 'study' : basename(path).replace(/\.[^.]*$/, '');
  const report =
    out === undefined
      ? undefined
      : writeReports(result, out, name, { report: options.report, identity: await identityOf(files) });
  if (json) process.stdout.write(`${JSON.stringify(result)}\n`);
  else if (!quiet) {
    process.stdout.write(renderText(result, TERMINAL));
    if (report !== undefined) process.stdout.write(`\nReport: ${report}\n`);
  }
  process.exitCode = exitCode;
}

/** When, with what and from which files a report was made. */
async function identityOf(files: readonly string[]): Promise<ReportIdentity> {
  return {
    date: new Date().toISOString().slice(0, 10),
    version: `tintladder ${VERSION}`,
    inputs: await Promise.all(files.map(inputDigest)),
  };
}

/** The data of a study in JSON or YAML. */
function dataOf(text: string): unknown {
  try {
    return parseYaml(text);
  } catch (error) {
    const hint = error instanceof Error ? error.message.split('\n')[0] : undefined;
    throw new TintladderError('malformed', {
      path: 'the study',
      received: text.slice(0, 60),
      expected: 'JSON or YAML',
      ...(hint && { hint }),
    });
  }
}
