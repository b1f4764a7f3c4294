export { opaqueReflectance, ratioOf, unusable } from './kubelka-munk.js';
export { assertSurface, internalOf, measuredOf, noInternalReflectance } from './saunderson.js';
