import { once } from 'node:events';
import { Readable } from 'node:stream';
import { labFromSpectrum, type Viewing } from '../colorimetry/index.js';
import { readMeasurementStream } from '../exchange/index.js';
import { inFile } from './read-export.js';

/** How the colours are written: with a heading and commas, or one JSON object per line. */
export const COLOUR_FORMATS = ['csv', 'ndjson'] as const;

interface ColoursOptions {
  readonly viewing: Viewing;
  readonly format: (typeof COLOUR_FORMATS)[number];
}

/**
 * `tintladder colours`: CIELAB of every spectrum on standard input, one line each, in the order they come and in constant memory.
 *
 * Made for engines that split their data and pipe each part through a program. Readings without a spectrum are left out, since their Lab
 * can't be computed anew for another viewing; their number is said on the error stream.
 */
export async function colours({ viewing, format }: ColoursOptions): Promise<void> {
  // Node's own stream type and the web's differ in name only
  const input = Readable.toWeb(process.stdin) as unknown as ReadableStream<Uint8Array>;
  if (format === 'csv') await write('name,L*,a*,b*\n');
  let leftOut = 0;
  await inFile('standard input', async () => {
    for await (const { name, spectrum } of readMeasurementStream(input)) {
      if (!spectrum) leftOut++;
      else {
        const { L, a, b } = labFromSpectrum(spectrum, viewing);
        await write(format === 'csv' ? `${csvCell(name)},${L},${a},${b}\n` : `${JSON.stringify({ name, L, a, b })}\n`);
      }
    }
  });
  if (leftOut > 0) process.stderr.write(`tintladder: ${leftOut} readings without a spectrum were left out.\n`);
}

/** Waits where the reader of the output is slower than we are. */
async function write(text: string): Promise<void> {
  if (!process.stdout.write(text)) await once(process.stdout, 'drain');
}

const csvCell = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
