import { createReadStream, readFileSync, statSync } from 'node:fs';
import { basename, relative } from 'node:path';
import { TintladderError, type Warning } from '../core/index.js';
import {
  type Measurement,
  type MeasurementFile,
  type ReadOptions,
  readMeasurementStream,
  readMeasurements,
  type StreamProgress,
  type StreamSummary,
} from '../exchange/index.js';
import { fileProblem, onFile } from './command-problem.js';
import { STANDARD_INPUT } from './export-paths.js';
import { endProgress, showProgress } from './terminal.js';

/** The readings of an export and what had to be assumed, each note with the name of its file. */
export interface Export {
  readonly measurements: readonly Measurement[];
  readonly warnings: readonly Warning[];
}

/** Above this size an export is read as it arrives, with its progress on a terminal. */
const LARGE = 8_000_000;

/** Reads one export, of any size, as the caller says. */
export async function readExport(path: string, options: ReadOptions = {}): Promise<Export> {
  const size = onFile('read', path, () => statSync(path).size);
  const { measurements, warnings } =
    size > LARGE ? await readLarge(path, size, options) : await readWhole(path, options);
  const name = relative('', path);
  const named = warnings.map((warning) => ({ ...warning, path: warning.path ? `${name}, ${warning.path}` : name }));
  return { measurements, warnings: named };
}

/** Reads one export, or standard input, with all that is known of its tables. */
export function readWhole(path: string, options: ReadOptions = {}): Promise<MeasurementFile> {
  const bytes = onFile('read', path, () => readFileSync(path === STANDARD_INPUT ? process.stdin.fd : path));
  return inFile(path, () => readMeasurements(bytes, { ...namedBy(path), ...options }));
}

/** The file's name names the reading of a file that names none, as in a folder with one file per sample. */
function namedBy(path: string): { readonly fileName?: string } {
  return path === STANDARD_INPUT ? {} : { fileName: basename(path).replace(/(?<=.)\.[^.]*$/, '') };
}

async function readLarge(path: string, size: number, options: ReadOptions): Promise<Export> {
  const measurements: Measurement[] = [];
  let warnings: readonly Warning[] = [];
  const onProgress = ({ bytes }: StreamProgress) => showProgress(`${path}: ${Math.round((100 * bytes) / size)} %`);
  const onEnd = (summary: StreamSummary) => {
    warnings = summary.warnings;
    endProgress();
  };
  const stream = createReadStream(path);
  await inFile(path, async () => {
    try {
      for await (const measurement of readMeasurementStream(stream, {
        ...namedBy(path),
        ...options,
        onProgress,
        onEnd,
      })) {
        measurements.push(measurement);
      }
    } catch (error) {
      throw fileProblem('read', path, error);
    }
  });
  return { measurements, warnings };
}

/** Puts the file before the path of a fault, since a line number alone says little when there are several exports. */
export async function inFile<T>(path: string, action: () => T | Promise<T>): Promise<T> {
  try {
    return await action();
  } catch (error) {
    if (!(error instanceof TintladderError)) throw error;
    throw new TintladderError(error.code, { ...error, path: `${relative('', path) || path}, ${error.path}` });
  }
}
