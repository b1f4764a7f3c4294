// Laboratories that don't exist: components, designs, numbers of packages and quality of history drawn at random, wider than the rules assume.
// Everything is in natural logarithms of a strength, so that 0.02 is 2 %.

/** Seeded random numbers: mulberry32, normal ones by Box and Muller, chi-squared ones as sums of squares. */
export function randomFrom(seed) {
  let state = seed >>> 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  const between = (low, high) => low + (high - low) * uniform();
  const logBetween = (low, high) => Math.exp(between(Math.log(low), Math.log(high)));
  const whole = (low, high) => low + Math.floor(uniform() * (high - low + 1));
  const chance = (p) => uniform() < p;
  const chiSquared = (n) => Array.from({ length: n }, () => normal() ** 2).reduce((sum, value) => sum + value, 0);
  return { uniform, normal, between, logBetween, whole, chance, chiSquared };
}

export const LEVELS = ['grind', 'weighing', 'drawdown', 'spot'];

/** Standard deviations of each level. */
export function drawComponents(random) {
  return {
    grind: random.logBetween(0.005, 0.04),
    weighing: random.logBetween(0.005, 0.03),
    drawdown: random.logBetween(0.002, 0.02),
    spot: random.logBetween(0.001, 0.008),
  };
}

/**
 * Readings of one side: a nest by the counts of a design, such as `{ weighing: 3, spot: [1, 4] }`, where a pair is drawn anew for every unit.
 * Levels that the design doesn't name scatter too, once for each unit above.
 */
export function readSide(random, effect, components, design) {
  const nest = (value, [level, ...below]) => {
    if (level === undefined) return value;
    const made = () => nest(value + components[level] * random.normal(), below);
    const given = design[level];
    if (given === undefined) return made();
    const count = Array.isArray(given) ? random.whole(...given) : given;
    return { [level]: Array.from({ length: count }, made) };
  };
  return nest(effect, LEVELS);
}

/** What a laboratory has written down of its components: each estimated from its own number of degrees of freedom. */
export function drawHistory(random, components, degreesOfFreedom, levels = LEVELS) {
  const estimated = levels.map((level) => [
    level,
    components[level] * Math.sqrt(random.chiSquared(degreesOfFreedom[level]) / degreesOfFreedom[level]),
  ]);
  return { ...Object.fromEntries(estimated), degreesOfFreedom };
}

/** Numbers of degrees of freedom of a history, few or many. */
export function drawDegreesOfFreedom(random) {
  return {
    grind: random.whole(5, 20),
    weighing: random.whole(8, 40),
    drawdown: random.whole(10, 60),
    spot: random.whole(20, 120),
  };
}

/**
 * One paint: a reference R and trials, each with its effect and its own grind.
 *
 * @returns `sides` as readings, and for every side its true `package` effect and the true effect of its mill base, `millBase`
 */
export function drawPaint(random, { names, effects, components, design, ownComponents = {} }) {
  const truth = {};
  const sides = {};
  names.forEach((name, i) => {
    const own = ownComponents[name] ?? components;
    const named = typeof design === 'function' ? design(name) : design;
    const millBase = effects[i] + own.grind * random.normal();
    truth[name] = { package: effects[i], millBase };
    // where grinds are repeated every one of them scatters around the package, otherwise there is the one mill base
    sides[name] =
      named.grind === undefined
        ? readSide(random, millBase, { ...own, grind: 0 }, named)
        : readSide(random, effects[i], own, named);
  });
  return { sides, truth };
}

export const namesOf = (count) => ['R', ...Array.from({ length: count - 1 }, (_, i) => String.fromCharCode(65 + i))];
