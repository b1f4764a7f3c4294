// Trial of the verdicts of tintladder/evidence, written from its public documentation alone: laboratories are drawn at random, the functions
// are asked as a user would, and the answers are compared with the truth. Seeded: node scripts/trial-evidence.mjs [laboratories] [seed], after a
// build. Scatter and differences are of natural logarithms of strengths.
const { compareSides, decide, decideAtOneRisk, judge, precisionFromControls, repetitionOf } = await import(
  new URL('../dist/evidence.js', import.meta.url).href
);

const LABORATORIES = Number(process.argv[2] ?? 300);
const SEED = Number(process.argv[3] ?? 1);
const LEVELS = ['grind', 'weighing', 'drawdown', 'spot'];
/** How much may be claimed; a batch is to production what a mill base is to development. */
const HEIGHT = { film: 0, 'mill-base': 1, batch: 1, package: 2 };
const LEAD = Math.log(1.05);

let state = SEED >>> 0;
/** Uniform between 0 and 1 (mulberry32). */
function uniform() {
  state = (state + 0x6d2b79f5) >>> 0;
  let mixed = Math.imul(state ^ (state >>> 15), state | 1);
  mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
  return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
}
const between = (low, high) => low + (high - low) * uniform();
const whole = (low, high) => low + Math.floor((high - low + 1) * uniform());
const chance = (probability) => uniform() < probability;
const pick = (list) => list[Math.floor(list.length * uniform())];
const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;
const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
const chiSquare = (degrees) =>
  Array.from({ length: degrees }, () => normal() ** 2).reduce((sum, value) => sum + value, 0);

/** Scatter of mean 0 and standard deviation 1. */
const SHAPES = {
  normal,
  'heavy-tailed': () => normal() / Math.sqrt(chiSquare(5) / 5) / Math.sqrt(5 / 3),
  skewed: () => -Math.log(1 - uniform()) - 1,
  'now and then a slip': () => (normal() * (chance(0.05) ? 4 : 1)) / Math.sqrt(0.95 + 0.05 * 16),
};

/** How many units of each level a unit of the one above holds, for one side; drawn anew for every unit where unbalanced. */
const KINDS = {
  'one reading': () => fixed(1, 1, 1, 1),
  'spots of one film': () => fixed(1, 1, 1, whole(2, 6)),
  'drawdowns of one weigh-up': () => fixed(1, 1, whole(2, 4), whole(1, 3)),
  'weigh-ups': () => fixed(1, whole(2, 5), whole(1, 2), whole(1, 3)),
  'weigh-ups by day': () => fixed(1, whole(3, 5), 1, whole(1, 2)),
  'weigh-ups, unbalanced': () => free([1, 1], [2, 5], [1, 2], [1, 3]),
  'some sides one weigh-up': () => () => (chance(0.4) ? fixed(1, 1, 1, whole(1, 3)) : fixed(1, whole(2, 4), 1, 2)),
  grinds: () => fixed(whole(2, 5), whole(1, 3), 1, whole(1, 3)),
  'grinds, unbalanced': () => free([2, 4], [1, 3], [1, 2], [1, 2]),
  'some sides one grind': () => () =>
    chance(0.4) ? fixed(1, whole(2, 4), 1, 1) : fixed(whole(2, 4), whole(1, 2), 1, 2),
};
function fixed(...counts) {
  return { count: (depth) => counts[depth] };
}
function free(...ranges) {
  return { count: (depth) => whole(...ranges[depth]) };
}

/** Readings of one side with the truth of every kind of claim about it. */
function side(truth, scatter, shape, design, grinds, days) {
  const make = (depth, value) => {
    if (depth === 4) {
      return { reading: value, film: value };
    }
    const level = LEVELS[depth];
    const units = [];
    const held = design.count(depth);
    for (let index = 0; index < held; index++) {
      const effect = level === 'grind' ? grinds(index) : scatter[level] * shape();
      const own = value + effect;
      const inner = make(depth + 1, level === 'weighing' && days ? own + days[index] : own);
      // truths are means of units that count alike, without what the day did to all
      units.push({ own: depth === 3 ? value : own, reading: inner.reading, inner });
    }
    const film = depth === 3 ? value : mean(units.map((unit) => unit.inner.film));
    const weighing =
      depth < 1
        ? mean(units.map((unit) => unit.inner.weighing))
        : depth === 1
          ? mean(units.map(({ own }) => own))
          : value;
    const base = depth === 0 ? mean(units.map(({ own }) => own)) : value;
    const readings = units.map(({ reading }) => reading);
    let reading = readings.length > 1 ? { [level]: readings } : readings[0];
    if (readings.length > 1 && level === 'weighing' && days) {
      reading = { ...reading, day: readings.map((_, index) => `day ${index + 1}`) };
    }
    return { reading, film, weighing, base };
  };
  const { reading, film, weighing, base } = make(0, truth);
  return { reading, truths: { film, weighing, 'mill-base': base, batch: base, package: truth } };
}

/** A history as a laboratory might state it, with a name of its kind. */
function history(scatter) {
  if (chance(0.45)) {
    return { history: 'none' };
  }
  const few = chance(0.5);
  const wrong = chance(0.35) ? between(0.7, 2) : 1;
  const kind = wrong < 1 ? 'too small, x 0.7-1' : wrong > 1 ? 'too large, x 1-2' : few ? 'right, few' : 'right, many';
  const degrees = few ? whole(3, 8) : whole(20, 60);
  if (chance(0.4)) {
    const weighing = Math.hypot(scatter.weighing, scatter.drawdown) * wrong;
    const controls = Array.from({ length: Math.max(5, degrees + 1) }, () => {
      const value = weighing * normal();
      return { value: { spot: [0, 1].map(() => value + scatter.spot * wrong * normal()) } };
    });
    return { history: kind, precision: precisionFromControls(controls).precision };
  }
  const levels = LEVELS.slice(chance(0.35) ? 0 : chance(0.8) ? 1 : 2);
  const precision = { degreesOfFreedom: degrees };
  for (const level of levels) {
    precision[level] = Math.max(1e-5, scatter[level] * wrong * Math.sqrt(chiSquare(degrees) / degrees));
  }
  return { history: kind, precision };
}

function laboratory() {
  const scatter = {
    grind: chance(0.15) ? 0 : between(0, 0.03),
    weighing: between(0.005, 0.03),
    drawdown: between(0.002, 0.02),
    spot: between(0.001, 0.006),
  };
  const kind = pick(Object.keys(KINDS));
  const shapeName = chance(0.65) ? 'normal' : pick(Object.keys(SHAPES).slice(1));
  const count = whole(2, 9);
  const names = Array.from({ length: count }, (_, index) => (index === 0 ? 'R' : `P${index}`));
  const wild = chance(0.2) ? pick(names) : undefined;
  const truths = pick(['all equal', 'small', 'mixed', 'one leads']);
  const truth = {};
  for (const [index, name] of names.entries()) {
    const sign = chance(0.5) ? 1 : -1;
    const large = truths === 'mixed' ? chance(0.5) : truths === 'one leads' && index === 1;
    const size =
      index === 0 || truths === 'all equal'
        ? 0
        : large
          ? between(LEAD, 0.1)
          : truths === 'one leads'
            ? 0
            : between(0, 0.02);
    truth[name] = truths === 'one leads' ? size : sign * size;
  }
  const paints = chance(0.3) ? 2 : 1;
  const drawn = KINDS[kind]();
  const shape = SHAPES[shapeName];
  const grinds = Object.fromEntries(
    names.map((name) => {
      const own = Array.from({ length: 5 }, () => scatter.grind * (name === wild ? 3 : 1) * shape());
      return [name, (index) => own[index]];
    }),
  );
  const groups = Array.from({ length: paints }, (_, paint) => {
    const days = kind === 'weigh-ups by day' ? Array.from({ length: 5 }, () => between(-0.04, 0.04)) : undefined;
    const made = {};
    for (const name of names) {
      const factor = name === wild ? 3 : 1;
      const own = Object.fromEntries(LEVELS.map((level) => [level, scatter[level] * factor]));
      made[name] = side(truth[name], own, shape, typeof drawn === 'function' ? drawn() : drawn, grinds[name], days);
    }
    return { name: `paint ${paint + 1}`, made };
  });
  return { kind, shape: shapeName, wild, truths, groups, ...history(scatter) };
}

/** Rows of figures that are shares, by what they are counted for. */
const tables = new Map();
function count(table, row, column, hit) {
  const rows = tables.get(table) ?? tables.set(table, new Map()).get(table);
  const cells = rows.get(row) ?? rows.set(row, new Map()).get(row);
  const cell = cells.get(column) ?? cells.set(column, { hits: 0, of: 0 }).get(column);
  cell.hits += hit ? 1 : 0;
  cell.of += 1;
}
function print() {
  for (const [table, rows] of [...tables].toSorted(([one], [other]) => (one < other ? -1 : 1))) {
    const columns = [...new Set([...rows.values()].flatMap((cells) => [...cells.keys()]))];
    console.log(`\n${table}\n`);
    console.log(`| | ${columns.join(' | ')} |`);
    console.log(`| --- |${columns.map(() => ' ---: |').join('')}`);
    for (const [row, cells] of [...rows].toSorted(([one], [other]) => order(one) - order(other))) {
      const texts = columns.map((column) => {
        const cell = cells.get(column);
        return cell ? `${((100 * cell.hits) / cell.of).toFixed(1)} (${cell.of})` : '';
      });
      console.log(`| ${row} | ${texts.join(' | ')} |`);
    }
  }
}
function order(row) {
  const place = [...Object.keys(KINDS), 'none', 'right, few', 'right, many', ...Object.keys(SHAPES)].indexOf(row);
  return place < 0 ? 99 : place;
}

/** What one side carries by the guide: by what was made anew, or by a history of that level. */
function carries(reading, precision) {
  const units = Object.fromEntries(repetitionOf(reading).units.map(({ level, count: of }) => [level, of]));
  if ((units.grind ?? 1) > 1 || precision?.grind !== undefined) {
    return 2;
  }
  return (units.weighing ?? 1) > 1 || precision?.weighing !== undefined ? 1 : 0;
}

const covers = (interval, truth) => interval.low <= truth && truth <= interval.high;
const faults = new Map();
function fault(text) {
  faults.set(text, (faults.get(text) ?? 0) + 1);
}

/** Asks for one claim, or for what is left to the package, and counts the answers. */
function ask(lab, claim, population) {
  const { kind, groups, precision } = lab;
  const given = groups.map(({ name, made }) => ({
    name,
    reference: 'R',
    sides: Object.fromEntries(Object.entries(made).map(([of, { reading }]) => [of, reading])),
  }));
  let result;
  try {
    result = compareSides(given, { precision, claim, population });
  } catch (error) {
    fault(`${kind}, claim ${claim ?? 'left out'}: ${error.code ?? error.name}: ${error.message}`);
    return;
  }
  const asked = population ?? claim ?? 'left out';
  const first = asked === 'left out';
  const honest = !lab.history.startsWith('too');
  const plain = honest && lab.shape === 'normal' && lab.wild === undefined;
  const study = { joint: false, any: 0, pairs: false, pair: 0, found: false, equal: false, history: false };
  const items = new Map();
  const packages = new Map();
  for (const [index, group] of result.groups.entries()) {
    const { made } = groups[index];
    const difference = (comparison, of) => made[comparison.trial].truths[of] - made[comparison.reference].truths[of];
    let lowest = 2;
    for (const comparison of group.againstReference) {
      const { trial, interval, joint, finding, standardDeviation, degreesOfFreedom, shortfall } = comparison;
      const truth = difference(comparison, comparison.claim);
      lowest = Math.min(lowest, HEIGHT[comparison.claim]);
      const own = Math.min(carries(made[trial].reading, precision), carries(made.R.reading, precision));
      const anywhere = Math.max(...Object.values(made).map(({ reading }) => carries(reading, precision)));
      if (first) {
        const table = 'D. Claims, in % of comparisons, nothing asked for';
        for (const height of ['film', 'mill-base', 'package']) {
          count(table, kind, height, comparison.claim === height);
        }
        count(table, kind, 'above what both sides carry', HEIGHT[comparison.claim] > own);
        count(table, kind, 'above what any side carries', HEIGHT[comparison.claim] > anywhere);
        count(table, kind, 'below what both sides carry', HEIGHT[comparison.claim] < own);
        count(table, kind, 'no interval', interval === undefined);
      }
      if (shortfall && finding !== 'undecided') {
        fault('a finding in spite of a shortfall');
      }
      if (claim && HEIGHT[comparison.claim] < HEIGHT[claim] && finding !== 'undecided') {
        fault('a finding below the claim that was wanted');
      }
      if (interval && joint && (joint.low > interval.low + 1e-9 || joint.high < interval.high - 1e-9)) {
        fault('a joint interval that does not hold the single one');
      }
      study.found ||= (finding === 'higher' && truth <= 0) || (finding === 'lower' && truth >= 0);
      study.equal ||= finding !== 'undecided' && difference(comparison, 'package') === 0;
      if (first && difference(comparison, 'package') >= LEAD) {
        count(
          'E. Leads of 5 to 10 % (of the package) shown as higher, nothing asked for',
          kind,
          lab.history,
          finding === 'higher',
        );
      }
      // the truth lies a hair beyond the limit of the first paint, and far within that of a second: nothing may meet both
      const sure = index > 0;
      const at = (of) => ({ lower: (sure ? -1 : 0) + difference(comparison, of) + 1e-9 });
      const figure = { value: comparison.difference, interval, standardDeviation, degreesOfFreedom };
      const push = (map, limit) => map.set(trial, [...(map.get(trial) ?? []), { ...figure, joint, limit }]);
      push(items, at(comparison.claim));
      push(packages, at('package'));
      study.history ||= comparison.fromHistory.length > 0;
      if (!interval) {
        continue;
      }
      study.any += 1;
      study.joint ||= !covers(joint, truth);
      const hit = covers(interval, truth);
      if (plain) {
        count(
          `A. Single interval holds the truth of what is claimed: normal scatter, right or no history (want 95)`,
          kind,
          `${asked}: ${comparison.claim}`,
          hit,
        );
        if (kind === 'drawdowns of one weigh-up' && comparison.claim === 'film') {
          count(
            'A2. Several drawdowns claimed as a film',
            kind,
            `${asked}: truth of the weigh-up`,
            covers(interval, difference(comparison, 'weighing')),
          );
        }
      }
      if (first && plain) {
        count('A3. Plain laboratories by history, nothing asked for', kind, lab.history, hit);
        const known = comparison.fromHistory.length > 0 ? 'a level only from history' : 'all from repeats';
        count('A4. Plain laboratories by source, nothing asked for', `history ${lab.history}`, known, hit);
      }
      if (first) {
        const wilds =
          lab.wild === undefined ? '' : lab.wild === trial || lab.wild === 'R' ? ', itself wild' : ', another one wild';
        count('B. The same by stress, nothing asked for', lab.shape + wilds, comparison.claim, hit);
        if (lab.shape === 'normal' && lab.wild === undefined) {
          count('B. The same by stress, nothing asked for', `history ${lab.history}`, comparison.claim, hit);
        }
      }
      const rule = { rule: 'conformance-probability', risk: 0.05 };
      if (first && plain && !sure) {
        const table =
          "F. False 'meets' with the truth at the limit, single figures; normal scatter, right or no history";
        count(table, kind, 'judge, claimed (2.5)', judge(figure.value, interval, at(comparison.claim)) === 'meets');
        count(
          table,
          kind,
          'decide by probability, claimed (5)',
          decide(figure, at(comparison.claim), rule).outcome === 'meets',
        );
        count(table, kind, 'decide by probability, package', decide(figure, at('package'), rule).outcome === 'meets');
      }
    }
    for (const pair of group.pairs) {
      if (pair.joint) {
        study.pair += 1;
        study.pairs ||= !covers(pair.joint, difference(pair, pair.claim));
      }
    }
    if (first || claim === 'film') {
      const of = ['film', 'mill-base', 'package'][lowest];
      const trials = Object.keys(made).filter((name) => name !== 'R');
      const top = Math.max(...trials.map((name) => made[name].truths[of]));
      const best = trials.filter((name) => made[name].truths[of] === top);
      if (trials.length > 1) {
        const table = 'G. Best set, per group of several trials, plain laboratories';
        if (plain) {
          count(
            table,
            kind,
            `${asked}: holds a best of what is claimed`,
            best.some((name) => group.best.notProvenWorse.includes(name)),
          );
          count(
            table,
            kind,
            `${asked}: holds every best`,
            best.every((name) => group.best.notProvenWorse.includes(name)),
          );
          const highest = Math.max(...trials.map((name) => made[name].truths.package));
          const packagesBest = trials.filter((name) => made[name].truths.package === highest);
          count(
            table,
            kind,
            `${asked}: holds a best package`,
            packagesBest.some((name) => group.best.notProvenWorse.includes(name)),
          );
          count(table, kind, `${asked}: leaves something out`, group.best.notProvenWorse.length < trials.length);
        }
        const { leader } = group.best;
        if (leader && plain && first) {
          const truth = made[leader.trial].truths[of] - made.R.truths[of];
          const table = 'I. Leader above the truth of what is claimed, plain laboratories (50 would be fair)';
          count(table, kind, 'as found', leader.difference > truth);
          count(table, kind, 'shrunk', leader.shrunk > truth);
        }
      }
    }
  }
  if (study.any > 0 && first) {
    const table =
      'J. Studies with any miss of a joint interval against the reference, nothing asked for (want at most 5)';
    const causes = [
      ...(lab.shape === 'normal' ? [] : [lab.shape]),
      ...(lab.wild === undefined ? [] : ['one package scatters threefold']),
      ...(honest ? [] : [`history ${lab.history}`]),
    ];
    const row =
      causes.length === 0 ? `plain, history ${lab.history}` : causes.length === 1 ? causes[0] : 'several stresses';
    count(table, row, study.history ? 'a level only from history' : 'all from repeats', study.joint);
  }
  if (study.any > 0) {
    const stress = plain ? 'plain' : 'stressed';
    const table = `C. Studies with any miss, claim ${asked} (want at most 5)`;
    count(table, kind, `joint against reference, ${stress}`, study.joint);
    count(table, kind, `joint over pairs, ${stress}`, study.pairs);
    count(table, kind, `false finding, ${stress}`, study.found);
    if (lab.truths === 'all equal') {
      count(table, kind, `equal packages told apart, ${stress}`, study.equal);
    }
    if (first && items.size > 0) {
      const list = (map) => [...map].map(([name, figures]) => ({ name, figures }));
      const joined = (map) =>
        list(map).map(({ name, figures }) => ({
          name,
          figures: figures.map((one) => ({ ...one, interval: one.joint })),
        }));
      const meets = (given, rule) => decideAtOneRisk(given, rule).items.some(({ outcome }) => outcome === 'meets');
      const probability = { rule: 'conformance-probability', risk: 0.05 };
      const decided =
        "H. Studies with any false 'meets', every truth at its limit in the first paint, decideAtOneRisk (want at most 5)";
      count(decided, kind, `probability, claimed, ${stress}`, meets(list(items), probability));
      count(decided, kind, `joint intervals, claimed, ${stress}`, meets(joined(items), { rule: 'interval' }));
      count(decided, kind, `probability, package, ${stress}`, meets(list(packages), probability));
    }
  }
}
const started = Date.now();
console.log(`${LABORATORIES} laboratories, seed ${SEED}; figures in %, how many in brackets`);
for (let index = 0; index < LABORATORIES; index++) {
  const lab = laboratory();
  ask(lab, undefined);
  if (['spots of one film', 'drawdowns of one weigh-up'].includes(lab.kind)) {
    ask(lab, 'film');
  }
  if (lab.kind.includes('grind')) {
    ask(lab, 'mill-base');
  }
  if (lab.kind.startsWith('weigh-ups')) {
    ask(lab, undefined, 'batch');
  }
  if (index % 3 === 0) {
    ask(lab, 'package');
  }
}
print();
console.log(`\nfaults: ${faults.size === 0 ? 'none' : ''}`);
for (const [text, times] of faults) {
  console.log(`- ${times} x ${text}`);
}
console.error(`${((Date.now() - started) / 1000).toFixed(0)} s`);
