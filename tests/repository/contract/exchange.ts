import { createSpectrum, D65_10 } from '../../../src/colorimetry/index.js';
import type { RoomContract } from './sound-calls.js';

const SPECTRUM = createSpectrum({ start: 400, step: 10, values: Array(31).fill(0.5), scale: 'fraction' });
/** As JSON gives it back, so that its figures are checked. */
export const MEASUREMENT = {
  name: 'white',
  spectrum: JSON.parse(JSON.stringify(SPECTRUM)),
  lab: { L: 76, a: 0, b: 0 },
  xyz: { X: 47, Y: 50, Z: 54 },
  conditions: { viewing: D65_10, specular: 'included' },
  fields: { batch: '7' },
  line: 2,
};
const TEXT = 'Sample;400;410\nwhite;92,1;92,4\ngrey;42,1;42,4\n';
const READING = { fileName: 'panels', exclude: [{ name: 'grey', line: 3, reason: 'scratched' }], maxBytes: 1000 };

async function* pieces() {
  yield new TextEncoder().encode(TEXT);
}

export const EXCHANGE: RoomContract = {
  notYet: [],
  calls: {
    readMeasurementStream: () => ({
      args: [pieces(), { ...READING, signal: new AbortController().signal, onProgress: () => {}, onEnd: () => {} }],
      optional: [1],
      options: [1],
      infinite: ['maxBytes'],
    }),
    readMeasurements: () => ({ args: [TEXT, READING], optional: [1], options: [1], infinite: ['maxBytes'] }),
    writeMeasurements: () => ({ args: [[MEASUREMENT], { format: 'delimited-text' }], options: [1] }),
  },
};
