export { opaqueReflectance, ratioOf, unusable } from './kubelka-munk.js';
export { internalOf, measuredOf, noInternalReflectance } from './saunderson.js';
export { assertSurface } from './surface.js';
export { assertOnSurface, conditionsOnSurface } from './surface-conditions.js';
