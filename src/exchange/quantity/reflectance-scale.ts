/** How reflectance stands in a file: 1 or 100 for the perfect reflecting diffuser. */
export type ReflectanceScale = 'fraction' | 'percent';
