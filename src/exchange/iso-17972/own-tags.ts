/** Tags in which is written what the format has no place for, and from which it is read again. */
export const REPLICATE_TAG = 'tintladder replicate';
export const SESSION_TAG = 'tintladder session';
export const BAND_PASS_TAG = 'tintladder band-pass';

/** Type of an object that has none of its own. */
export const NO_TYPE = 'Unspecified';

/** Beginning of the identifier of an object that has none of its own. */
export const OWN_ID = 'tintladder-';
