import type { IlluminantName } from './viewing.js';

const CIE = 'CIE 015:2018';
const DAYLIGHT = `${CIE}, daylight components`;
const LAMP = `${CIE}, fluorescent lamps (figures of CIE 15.2-1986)`;

const source = (description: string, from: string) => ({ description, source: from });

/**
 * What each named illuminant is and where its figures come from.
 *
 * @example ILLUMINANTS.FL2.description // 'cool white fluorescent lamp'
 * @example Object.keys(ILLUMINANTS).length // 19
 */
export const ILLUMINANTS: Readonly<Record<IlluminantName, { readonly description: string; readonly source: string }>> =
  /* @__PURE__ */ (() => ({
    A: source('incandescent lamp, 2856 K', `${CIE}; ISO/CIE 11664-2, by its formula`),
    C: source('average daylight of 1931, 6774 K', `${CIE} (figures of CIE 1931)`),
    D50: source('daylight, 5003 K', DAYLIGHT),
    D55: source('daylight, 5503 K', DAYLIGHT),
    D65: source('daylight, 6504 K', `${CIE}; ISO/CIE 11664-2, table`),
    D75: source('daylight, 7504 K', DAYLIGHT),
    E: source('equal energy', CIE),
    FL1: source('daylight fluorescent lamp', LAMP),
    FL2: source('cool white fluorescent lamp', LAMP),
    FL3: source('white fluorescent lamp', LAMP),
    FL4: source('warm white fluorescent lamp', LAMP),
    FL5: source('daylight fluorescent lamp', LAMP),
    FL6: source('light white fluorescent lamp', LAMP),
    FL7: source('broad-band daylight fluorescent lamp', LAMP),
    FL8: source('broad-band fluorescent lamp, 5000 K', LAMP),
    FL9: source('broad-band cool white fluorescent lamp', LAMP),
    FL10: source('narrow-band fluorescent lamp, 5000 K', LAMP),
    FL11: source('narrow-band fluorescent lamp, 4000 K', LAMP),
    FL12: source('narrow-band fluorescent lamp, 3000 K', LAMP),
  }))();
