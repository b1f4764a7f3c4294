/** A geometry of illumination and viewing as files write it, in one way of writing. */
export interface ParsedGeometry {
  /** As in CIE 015 and ISO 7724: `45°a:0°`, `di:8°`. */
  readonly geometry: string;
  /** The specular mode that the letter behind d states. */
  readonly specular?: 'included' | 'excluded';
  readonly length: number;
}

const SIDE = String.raw`(?:(d(?:iffuse)?)\s*([ie])?(?:\s*°)?|(\d{1,3})(?:[.,]0+)?\s*°?\s*([acx])?)`;
const WRITTEN = new RegExp(String.raw`^${SIDE}\s*[:/]\s*${SIDE}(?![a-z\d])`, 'i');

/**
 * The geometry that a text begins with: `d/8`, `di:8°`, `8/d`, `45/0`, `45.0°a : 0°`, `diffuse/8`. Two angles count only where one is 45° or 0°
 * and none could be an observer's.
 *
 * @see CIE 015:2018, 5; ISO 18314-1
 */
export function geometryAt(text: string): ParsedGeometry | undefined {
  const found = WRITTEN.exec(text);
  if (!found) return undefined;
  const [whole, d1, letter1 = '', angle1, form1 = '', d2, letter2 = '', angle2, form2 = ''] = found;
  if (d1 && d2) return undefined;
  if (!d1 && !d2) {
    const angles = [Number(angle1), Number(angle2)];
    if (!angles.includes(45) || angles.some((angle) => angle > 110)) return undefined;
  }
  const side = (d: string | undefined, letter: string, angle: string, form: string) =>
    d ? `d${letter.toLowerCase()}` : `${Number(angle)}°${form.toLowerCase()}`;
  const letter = (letter1 || letter2).toLowerCase();
  return {
    geometry: `${side(d1, letter1, angle1, form1)}:${side(d2, letter2, angle2, form2)}`,
    ...(letter ? { specular: letter === 'i' ? 'included' : 'excluded' } : {}),
    length: whole.length,
  };
}
