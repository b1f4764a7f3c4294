#!/usr/bin/env node
import { createReadStream, mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { Readable } from 'node:stream';
import { Command, CommanderError } from 'commander';
import { parse as parseYaml } from 'yaml';
import { TintladderError, type Warning } from '../core/index.js';
import {
  type Measurement,
  readMeasurementStream,
  readMeasurements,
  type StreamProgress,
  type StreamSummary,
} from '../exchange/index.js';
import { renderHtml, renderInspection, renderMarkdown, renderText, toCsv } from '../report/index.js';
import { evaluateStudy, parseStudy, type StudyResult } from '../study/index.js';

const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as {
  version: string;
};

const EXIT = { meets: 0, fails: 1, undecided: 2, usage: 64, data: 65 } as const;

const colour = Boolean(process.stdout.isTTY) && !process.env.NO_COLOR;
// some terminals say 0
const width = process.stdout.columns || undefined;

/** A file that can't be read or written, or is no study, as a fault with its place. */
function attempt<T>(place: string, expected: string, action: () => T): T {
  try {
    return action();
  } catch (error) {
    if (error instanceof TintladderError) throw error;
    const seen = error instanceof Error ? error.message : String(error);
    throw new TintladderError('file-access', { path: place, received: seen, expected });
  }
}

/** Above this size an export is read as it arrives, with its progress on a terminal. */
const LARGE = 8_000_000;

interface Export {
  readonly measurements: readonly Measurement[];
  readonly warnings: readonly Warning[];
}

async function readExport(path: string): Promise<Export> {
  const size = attempt(path, 'a file that can be read', () => statSync(path).size);
  const read = size > LARGE ? readLarge(path, size) : readMeasurements(readFileSync(path));
  const { measurements, warnings } = await read;
  const name = relative('', path);
  const placed = warnings.map((warning) => ({ ...warning, path: warning.path ? `${name}, ${warning.path}` : name }));
  return { measurements, warnings: placed };
}

async function readLarge(path: string, size: number): Promise<Export> {
  const measurements: Measurement[] = [];
  let warnings: readonly Warning[] = [];
  const onProgress = ({ bytes }: StreamProgress) => {
    if (process.stderr.isTTY) process.stderr.write(`\r${path}: ${Math.round((100 * bytes) / size)} %`);
  };
  const onEnd = (summary: StreamSummary) => {
    warnings = summary.warnings;
    if (process.stderr.isTTY) process.stderr.write('\n');
  };
  // Node's own stream type and the web's differ in name only
  const stream = Readable.toWeb(createReadStream(path)) as unknown as ReadableStream<Uint8Array>;
  for await (const measurement of readMeasurementStream(stream, { onProgress, onEnd })) measurements.push(measurement);
  return { measurements, warnings };
}

/** Puts the file before the place of a fault, since a line number alone says little when there are several exports. */
async function inFile<T>(path: string, action: () => T | Promise<T>): Promise<T> {
  try {
    return await action();
  } catch (error) {
    if (!(error instanceof TintladderError) || error.code === 'file-access') throw error;
    throw new TintladderError(error.code, { ...error, path: `${path}, ${error.path}` });
  }
}

function writeReports(result: StudyResult, folder: string, name: string): string {
  const reports = {
    html: renderHtml(result),
    md: renderMarkdown(result),
    csv: toCsv(result),
    json: `${JSON.stringify(result, undefined, 1)}\n`,
  };
  const written: string[] = [];
  attempt(folder, 'a folder that can be written', () => {
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

async function compare(path: string, options: { out?: string; json?: boolean; quiet?: boolean }): Promise<void> {
  const data: unknown = attempt(path, 'a study in JSON or YAML', () => parseYaml(readFileSync(path, 'utf8')));
  const study = await inFile(path, () => parseStudy(data));
  const exports: Export[] = [];
  for (const file of study.measurements ?? []) {
    const place = resolve(dirname(path), file);
    exports.push(await inFile(relative('', place), () => readExport(place)));
  }
  const found = await evaluateStudy(
    study,
    exports.flatMap(({ measurements }) => measurements),
  );
  const result = { ...found, warnings: [...exports.flatMap(({ warnings }) => warnings), ...found.warnings] };
  const name = basename(path).replace(/\.[^.]*$/, '');
  const report = options.out === undefined ? undefined : writeReports(result, options.out, name);
  if (options.json) process.stdout.write(`${JSON.stringify(result)}\n`);
  else if (!options.quiet) {
    process.stdout.write(renderText(result, { width, colour }));
    if (report !== undefined) process.stdout.write(`\nReport: ${report}\n`);
  }
  process.exitCode = EXIT[result.outcome];
}

async function inspect(path: string): Promise<void> {
  const bytes = attempt(path, 'a file that can be read', () => readFileSync(path));
  const read = await inFile(path, () => readMeasurements(bytes));
  process.stdout.write(renderInspection(read, { colour }));
}

const program = new Command('tintladder')
  .description('Relative tinting strength, rub-out and colour difference from spectrophotometer exports.')
  .version(version)
  .exitOverride();

program
  .command('compare')
  .argument('<study>', 'description of the comparison, JSON or YAML; it names its exports')
  .description('evaluate a comparison and say which package meets every criterion')
  .option('--out <dir>', 'write the report there as HTML, Markdown, CSV and JSON')
  .option('--json', 'print the result as JSON instead of the table')
  .option('--quiet', 'print nothing; the exit code tells')
  .action(compare);

program
  .command('inspect')
  .argument('<file>', 'a measurement export')
  .description('show what is in an export: format, grid, units assumed, readings, notes')
  .action(inspect);

program.addHelpText(
  'after',
  `
Examples:
  tintladder compare study.json
  tintladder compare study.yaml --out report
  tintladder compare study.json --json > result.json
  tintladder inspect readings.csv

Exit codes:
  0 every package meets every criterion   1 something fails   2 something is undecided
  64 the command line is wrong            65 a file or study is wrong

NO_COLOR is honoured; a pipe gets no colour and no progress.`,
);

try {
  await program.parseAsync();
} catch (error) {
  if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? 0 : EXIT.usage;
  else if (error instanceof TintladderError) {
    process.stderr.write(`tintladder: ${error.message} [${error.code}]\n`);
    process.exitCode = EXIT.data;
  } else throw error;
}
