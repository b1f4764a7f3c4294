import { film, STUDY as INVENTED, measurement } from '../../study/invented-study.js';
import type { RoomContract } from './sound-calls.js';

const DESCRIPTION = JSON.parse(JSON.stringify(INVENTED));
const NAMES = ['W R unrubbed 1', 'W R rubbed 1', 'W A unrubbed 1', 'W A rubbed 1'];
/** As JSON gives them back, so that their figures are checked. */
const MEASUREMENTS = JSON.parse(
  JSON.stringify([...NAMES.map((name, i) => measurement(name, film(1 + 0.05 * i))), measurement('W white 1', film(0))]),
);

export const STUDY: RoomContract = {
  notYet: [],
  calls: {
    evaluateStudy: () => ({ args: [DESCRIPTION, MEASUREMENTS], options: [0] }),
    parseStudy: () => ({ args: [DESCRIPTION], options: [0] }),
    quantityName: () => ({ args: ['rub-out'] }),
  },
};
