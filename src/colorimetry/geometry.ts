interface Side {
  /** `d` for diffuse, or the angle in degrees. */
  readonly base: string;
  /** Behind `d`: `i` or `e`, specular reflection included or excluded. Behind an angle: `a`, `c` or `x`, annular, circumferential or from one side. */
  readonly form: string;
}

/**
 * Whether two geometries can be one: `di:8°` is a kind of `d:8°`, and `45°a:0°` of `45/0`, but neither is the other.
 *
 * Illumination stands before viewing. Texts that are no geometry agree only if they are equal.
 *
 * @see CIE 015:2018, recommended geometries, for the way of writing
 */
export function geometriesAgree(one: string, other: string): boolean {
  const [sides, others] = [sidesOf(one), sidesOf(other)];
  if (!sides || !others) return one.trim() === other.trim();
  return sides.every(({ base, form }, i) => {
    const { base: otherBase, form: otherForm } = others[i];
    return base === otherBase && (form === otherForm || form === '' || otherForm === '');
  });
}

function sidesOf(geometry: string): readonly Side[] | undefined {
  const text = geometry.toLowerCase().replace(/[\s°]/g, '');
  const match = /^(d|\d+)([a-z]?)[:/](d|\d+)([a-z]?)$/.exec(text);
  if (!match) return undefined;
  const [, base, form, otherBase, otherForm] = match;
  return [
    { base, form },
    { base: otherBase, form: otherForm },
  ];
}
