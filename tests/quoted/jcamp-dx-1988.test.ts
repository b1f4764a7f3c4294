import { expect, test } from 'vitest';
import { decodeAsdf } from '../../src/exchange/jcamp-dx/asdf.js';

// McDonald & Wilks (1988), JCAMP-DX: A Standard Form for Exchange of Infrared Spectra in Computer Readable Form, Appl. Spectrosc. 42,
// 151-162: one line of a spectrum in fixed form and in the ASDF forms. The lines are given from memory of the paper; that every form decodes
// to the numbers of the fixed form is what the paper says of them, and what no slip of memory would leave standing.
const FIXED =
  '599.860 0 0 0 0 2 4 4 4 7 5 4 4 5 5 7 10 11 11 6 5 7 6 9 9 7 10 10 9 10 11 12 15 16 16 14 17 38 38 35 38 42 47 54 59 66 75 78 88 96 104 110 121 128';
const PACKED =
  '599.860+0+0+0+0+2+4+4+4+7+5+4+4+5+5+7+10+11+11+6+5+7+6+9+9+7+10+10+9+10+11+12+15+16+16+14+17+38+38+35+38+42+47+54+59+66+75+78+88+96+104+110+121+128';
const SQUEEZED = '599.860@@@@BDDDGEDDEEGA0A1A1FEGFIIGA0A0IA0A1A2A5A6A6A4A7C8C8C5C8D2D7E4E9F6G5G8H8I6A04A10A21A28';
const DIFFERENCE_WITH_DUPLICATES = '599.860@VKT%TLkj%J%KLJ%njKjL%kL%jJULJ%kLK1%lLMNPNPRLJ0QTOJ1P';

const numbers = FIXED.split(' ').map(Number);

test.each([
  ['fixed', FIXED],
  ['PAC', PACKED],
  ['SQZ', SQUEEZED],
  ['DIFDUP', DIFFERENCE_WITH_DUPLICATES],
])("the paper's line in %s form", (_, text) => {
  const [{ abscissa, ordinates }] = decodeAsdf([{ text, line: 1 }]);
  expect([abscissa, ...ordinates]).toEqual(numbers);
});
