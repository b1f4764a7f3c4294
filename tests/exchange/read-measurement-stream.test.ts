import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Measurement,
  readMeasurementStream,
  readMeasurements,
  type StreamSummary,
} from '../../src/exchange/index.js';

const SEED = 20250103;

/** A stream that hands out bytes in pieces of the given sizes, over and over. */
function streamOf(bytes: Uint8Array, sizes: readonly number[]): ReadableStream<Uint8Array> {
  let at = 0;
  let piece = 0;
  return new ReadableStream({
    pull(controller) {
      if (at >= bytes.length) return controller.close();
      const size = sizes[piece++ % sizes.length];
      controller.enqueue(bytes.slice(at, at + size));
      at += size;
    },
  });
}

async function gather(stream: AsyncIterable<Measurement>): Promise<Measurement[]> {
  const measurements: Measurement[] = [];
  for await (const measurement of stream) measurements.push(measurement);
  return measurements;
}

function invent(count: number): string {
  const rows = Array.from(
    { length: count },
    (_, n) => `"näme ${n}",${[0, 1, 2].map((band) => (20 + ((n * 7 + band) % 60) + 0.25).toFixed(2))},ok`,
  );
  return `\uFEFFSample;Name\nName,400,410,420,Remark\r\n${rows.join('\r\n')}\r\n`;
}

const TEXTS = [
  invent(60),
  'Sample,400,410\nblack,1.5,1.6\nwhite,90,91\n',
  'Wavelength,a,b\n400,45,46\n410,47,48\n',
  'sample,wavelength,value\na,400,45\na,410,46\n',
  'Name;L*;a*;b*\n"x\ny";45,5;-1,25;2\n',
  'Sample,400,410\na,45,46\n\nBatch two\nSample,400,420\nb,50,51\n',
];

test(`gives what the whole-file reader gives, however the bytes are cut (seed ${SEED})`, async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...TEXTS),
      fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 5 }),
      async (text, sizes) => {
        const whole = readMeasurements(text);
        let summary: StreamSummary | undefined;
        const onEnd = (end: StreamSummary) => {
          summary = end;
        };
        const read = await gather(readMeasurementStream(streamOf(new TextEncoder().encode(text), sizes), { onEnd }));
        expect(read).toEqual(whole.measurements);
        expect(summary).toEqual({ format: whole.format, tables: whole.tables, warnings: whole.warnings });
      },
    ),
    { seed: SEED, numRuns: 60 },
  );
}, 30_000);

test('readings come while the file is still arriving, with progress', async () => {
  const bytes = new TextEncoder().encode(invent(40_000));
  const progress: number[] = [];
  let pulled = 0;
  let taken = 0;
  const source = new ReadableStream<Uint8Array>({
    pull(controller) {
      const at = pulled++ * 65_536;
      if (at >= bytes.length) return controller.close();
      controller.enqueue(bytes.slice(at, at + 65_536));
    },
  });
  let pulledAtFirst = 0;
  const stream = readMeasurementStream(source, { onProgress: ({ bytes: read }) => progress.push(read) });
  for await (const _ of stream) {
    pulledAtFirst ||= pulled;
    taken++;
  }
  expect(taken).toBe(40_000);
  expect(pulledAtFirst).toBeLessThan(8);
  expect(progress.at(-1)).toBe(bytes.length);
  expect(progress).toEqual([...progress].sort((a, b) => a - b));
});

test('UTF-16 with a mark streams too', async () => {
  const text = '\uFEFFSample,400,410\nweiß,92,93\n';
  const bytes = new Uint8Array(
    [...text].flatMap((character) => [character.charCodeAt(0) & 255, character.charCodeAt(0) >> 8]),
  );
  const [{ name }] = await gather(readMeasurementStream(streamOf(bytes, [1, 3])));
  expect(name).toBe('weiß');
});

describe('a fault ends the reading', () => {
  test.each([
    ['a non-number', new TextEncoder().encode('Sample,400,410\na,45,x\n'), 'not-a-number', 'line 2, column 3'],
    ['nothing', new Uint8Array(), 'empty-file', 'line 1, column 1'],
    ['a workbook', Uint8Array.of(0x50, 0x4b, 3, 4), 'not-text', 'the file'],
    [
      'two encodings',
      Uint8Array.of(...new TextEncoder().encode(`${'ß'.repeat(40)}\n`), 0xdf, 0x0a),
      'not-text',
      'before byte 83',
    ],
    ['an unclosed quote', new TextEncoder().encode('Sample,400,410\n"a,45,46\n'), 'malformed', 'line 2, column 1'],
  ] as const)('%s', async (_, bytes, code, path) => {
    await expect(gather(readMeasurementStream(streamOf(bytes, [64])))).rejects.toMatchObject({ code, path });
  });

  test('a quote that never closes does not gather the rest of the file', async () => {
    const text = `Sample,400,410\n"a,45,46\n${'b,45,46\n'.repeat(400_000)}`;
    let bytes = 0;
    const stream = readMeasurementStream(streamOf(new TextEncoder().encode(text), [65_536]), {
      onProgress: (progress) => {
        bytes = progress.bytes;
      },
    });
    await expect(gather(stream)).rejects.toMatchObject({ code: 'malformed', path: 'line 2, column 1' });
    expect(bytes).toBeLessThan(text.length / 2);
  });

  test('an unknown option', async () => {
    await expect(
      gather(readMeasurementStream(streamOf(new Uint8Array(), [1]), { scale: 'x' as 'percent' })),
    ).rejects.toMatchObject({ code: 'invalid-option' });
  });

  test('leaving early cancels the stream', async () => {
    let cancelled = false;
    const bytes = new TextEncoder().encode(invent(20_000));
    let at = 0;
    const source = new ReadableStream<Uint8Array>({
      pull(controller) {
        controller.enqueue(bytes.slice(at, at + 65_536));
        at += 65_536;
      },
      cancel() {
        cancelled = true;
      },
    });
    for await (const _ of readMeasurementStream(source)) break;
    expect(cancelled).toBe(true);
  });
});
