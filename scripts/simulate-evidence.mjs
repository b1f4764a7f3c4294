// How often what the evidence room says is true, on laboratories drawn at random whose truth is known: coverage, false claims, power.
//
//   npm run simulate:evidence -- [laboratories, default 2000] [seed, default 20260]
//
// Everything goes through the public functions of tintladder/evidence. Each part prints what it counted beside what is to be reached.
import { argv } from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import {
  drawComponents,
  drawDegreesOfFreedom,
  drawHistory,
  drawPaint,
  namesOf,
  randomFrom,
  readSide,
} from './simulate-evidence-laboratory.mjs';

const holds = ({ low, high }, value) => low <= value && value <= high;
const share = (count, of) => (of === 0 ? Number.NaN : count / of);

/** Counts of something true among things tried. */
function tally() {
  let yes = 0;
  let all = 0;
  return {
    add: (condition) => {
      all++;
      if (condition) yes++;
    },
    get share() {
      return share(yes, all);
    },
    get all() {
      return all;
    },
  };
}

const DESIGNS = {
  balanced: (random) => ({
    weighing: random.whole(2, 6),
    ...(random.chance(0.5) && { drawdown: random.whole(1, 3) }),
    ...(random.chance(0.7) && { spot: random.whole(1, 5) }),
  }),
  unbalanced: () => ({ weighing: [2, 6], drawdown: [1, 3], spot: [1, 5] }),
  grinds: (random) => ({ grind: random.whole(2, 4), weighing: random.whole(1, 3), spot: random.whole(1, 3) }),
};

function noEffects(names) {
  return names.map(() => 0);
}

function randomEffects(random, names) {
  const spread = random.logBetween(0.005, 0.1);
  return names.map(() => spread * random.normal());
}

/** Truth of a trial against the reference, of the population the claim speaks of. */
const truthOf = (truth, { trial, reference, claim }) =>
  claim === 'package'
    ? truth[trial].package - truth[reference].package
    : truth[trial].millBase - truth[reference].millBase;

/** Coverage of `interval` by design, each for packages that all scatter alike and one that scatters three times the others. */
export function coverageByDesign({ compareSides }, { laboratories, seed }) {
  const rows = [];
  for (const [design, drawDesign] of Object.entries(DESIGNS)) {
    for (const odd of [false, true]) {
      const random = randomFrom(seed);
      const covered = tally();
      const jointly = tally();
      for (let n = 0; n < laboratories; n++) {
        const names = namesOf(random.whole(odd ? 4 : 2, 12));
        const components = drawComponents(random);
        const tripled = Object.fromEntries(Object.entries(components).map(([level, value]) => [level, 3 * value]));
        const { sides, truth } = drawPaint(random, {
          names,
          effects: randomEffects(random, names),
          components,
          design: drawDesign(random),
          ownComponents: odd ? { A: tripled } : {},
        });
        const [{ againstReference }] = compareSides([{ sides, reference: 'R' }]).groups;
        let all = true;
        for (const comparison of againstReference) {
          const value = truthOf(truth, comparison);
          if (!holds(comparison.joint, value)) all = false;
          if (!odd || comparison.trial === 'A') covered.add(holds(comparison.interval, value));
        }
        jointly.add(all);
      }
      rows.push({
        design,
        scatter: odd ? 'A three times the others' : 'alike',
        covered: covered.share,
        toReach: odd ? '>= 0.91' : design === 'unbalanced' ? '0.935-0.98' : '0.94-0.975',
        jointlyCovered: jointly.share,
      });
    }
  }
  return rows;
}

/** Coverage where levels that were not repeated come from history. */
export function coverageWithHistory({ compareSides }, { laboratories, seed }) {
  const cases = {
    'one weigh-up, mill base': { design: () => ({ spot: 3 }), claim: 'mill-base' },
    'one reading, package': { design: () => ({}), claim: 'package' },
    'three weigh-ups of one grind, package': { design: () => ({ weighing: 3, spot: 2 }), claim: 'package' },
    'two or three drawdowns, mill base': { design: () => ({ drawdown: [2, 3], spot: 2 }), claim: 'mill-base' },
    'weigh-ups of R only, mill base': {
      design: (name) => (name === 'R' ? { weighing: 4, spot: 2 } : { spot: 2 }),
      claim: 'mill-base',
    },
  };
  return Object.entries(cases).map(([name, { design, claim }]) => {
    const random = randomFrom(seed);
    const covered = tally();
    const reached = tally();
    for (let n = 0; n < laboratories; n++) {
      const names = namesOf(random.whole(2, 8));
      const components = drawComponents(random);
      const precision = drawHistory(random, components, drawDegreesOfFreedom(random));
      const { sides, truth } = drawPaint(random, { names, effects: randomEffects(random, names), components, design });
      const [{ againstReference }] = compareSides([{ sides, reference: 'R' }], { precision, claim }).groups;
      for (const comparison of againstReference) {
        reached.add(comparison.claim === claim);
        covered.add(holds(comparison.interval, truthOf(truth, comparison)));
      }
    }
    return { design: name, claimReached: reached.share, covered: covered.share, toReach: '0.94-0.97' };
  });
}

/** The larger of history and today where today scatters 0.7 to 2 times the history. */
export function coverageOfFloor({ compareSides }, { laboratories, seed }) {
  const rows = [];
  for (const [readings, count, weighings] of [
    ['2 packages, 2 weigh-ups', 2, 2],
    ['2 packages, 3 weigh-ups', 2, 3],
    ['8 packages, 3 weigh-ups', 8, 3],
  ]) {
    for (const ratio of [0.7, 1, 1.5, 2]) {
      const random = randomFrom(seed);
      const covered = tally();
      for (let n = 0; n < laboratories; n++) {
        const names = namesOf(count);
        const components = drawComponents(random);
        const precision = drawHistory(random, components, drawDegreesOfFreedom(random), [
          'weighing',
          'drawdown',
          'spot',
        ]);
        const today = Object.fromEntries(Object.entries(components).map(([level, value]) => [level, ratio * value]));
        const design = { weighing: weighings, spot: 2 };
        const { sides, truth } = drawPaint(random, { names, effects: noEffects(names), components: today, design });
        const [{ againstReference }] = compareSides([{ sides, reference: 'R' }], { precision }).groups;
        for (const comparison of againstReference) covered.add(holds(comparison.interval, truthOf(truth, comparison)));
      }
      const toReach = weighings === 2 ? '>= 0.93' : '>= 0.94';
      rows.push({ readings, todayOverHistory: ratio, covered: covered.share, toReach });
    }
  }
  return rows;
}

/** Claims that stand although nothing carries them, over every design; and those that would be false. */
export function claimsBeyondEvidence({ compareSides }, { laboratories, seed }) {
  const designs = {
    'spots of one film': [{ spot: [2, 5] }, 'film'],
    'drawdowns of one weigh-up': [{ drawdown: [2, 4], spot: [1, 3] }, 'film'],
    'weigh-ups of one grind': [{ weighing: [2, 5], spot: [1, 3] }, 'mill-base'],
    grinds: [{ grind: [2, 3], weighing: [1, 2] }, 'package'],
  };
  return Object.entries(designs).map(([name, [design, most]]) => {
    const random = randomFrom(seed);
    const beyond = tally();
    const verdicts = tally();
    for (let n = 0; n < laboratories; n++) {
      const names = namesOf(random.whole(2, 8));
      const { sides } = drawPaint(random, {
        names,
        effects: noEffects(names),
        components: drawComponents(random),
        design,
      });
      const wanted = ['package', 'mill-base', undefined][random.whole(0, 2)];
      const [{ againstReference }] = compareSides([{ sides, reference: 'R' }], { claim: wanted }).groups;
      const order = ['film', 'mill-base', 'package'];
      for (const { claim, finding } of againstReference) {
        beyond.add(order.indexOf(claim) > order.indexOf(most));
        const tooLittle = most === 'film' || order.indexOf(most) < order.indexOf(wanted ?? 'film');
        if (tooLittle) verdicts.add(finding !== 'undecided');
      }
    }
    return { design: name, claimedBeyond: beyond.share, verdictsBelowTheClaim: verdicts.share, toReach: '0' };
  });
}

/** Any false claim in a study whose packages are all equal, in one paint or several. */
export function falseClaims({ compareSides }, { laboratories, seed }) {
  return [1, 3].flatMap((paints) =>
    ['balanced', 'unbalanced', 'grinds'].map((design) => {
      const random = randomFrom(seed + paints);
      const different = tally();
      const anyPair = tally();
      const bestMissed = tally();
      const led = tally();
      for (let n = 0; n < laboratories; n++) {
        const names = namesOf(random.whole(2, 10));
        const components = { ...drawComponents(random), ...(design !== 'grinds' && { grind: 0 }) };
        const drawn = DESIGNS[design](random);
        const groups = Array.from({ length: paints }, () => {
          const { sides } = drawPaint(random, { names, effects: noEffects(names), components, design: drawn });
          return { sides, reference: 'R' };
        });
        const result = compareSides(groups);
        different.add(
          result.groups.some(({ againstReference }) => againstReference.some(({ finding }) => finding !== 'undecided')),
        );
        anyPair.add(result.groups.some(({ pairs }) => pairs.some(({ joint }) => !holds(joint, 0))));
        // of equal packages one is the best by chance; each must be able to stay
        bestMissed.add(result.groups.some(({ best }) => !best.notProvenWorse.includes(names[names.length - 1])));
        if (names.length > 2) led.add(result.groups.some(({ best }) => best.notProvenWorse.length === 1));
      }
      return {
        paints,
        design,
        anyFalseClaim: different.share,
        anyFalsePair: anyPair.share,
        bestMissed: bestMissed.share,
        falseLead: led.share,
        toReach: '<= 0.06, lead <= 0.05',
      };
    }),
  );
}

/** The set that is not proven worse where packages differ. */
export function bestSets({ compareSides }, { laboratories, seed }) {
  const random = randomFrom(seed);
  const kept = tally();
  const falseLead = tally();
  let size = 0;
  for (let n = 0; n < laboratories; n++) {
    const names = namesOf(random.whole(3, 10));
    const effects = randomEffects(random, names);
    const { sides, truth } = drawPaint(random, {
      names,
      effects,
      components: drawComponents(random),
      design: DESIGNS.balanced(random),
    });
    const best = names.slice(1).reduce((a, b) => (truth[b].millBase > truth[a].millBase ? b : a));
    const { notProvenWorse } = compareSides([{ sides, reference: 'R' }]).groups[0].best;
    kept.add(notProvenWorse.includes(best));
    falseLead.add(notProvenWorse.length === 1 && notProvenWorse[0] !== best);
    size += notProvenWorse.length / (names.length - 1);
  }
  return [
    {
      holdsTheBest: kept.share,
      toReach: '0.95-0.998',
      falseLead: falseLead.share,
      leadToReach: '<= 0.05',
      shareOfPackages: size / laboratories,
    },
  ];
}

/** A true lead of 5 % over seven others, three weigh-ups each that scatter by 1.5 %. */
export function trueLead({ compareSides }, { laboratories, seed }) {
  const random = randomFrom(seed);
  const shown = tally();
  const stronger = tally();
  let raw = 0;
  let shrunk = 0;
  const components = { grind: 0, weighing: 0.015, drawdown: 0, spot: 0 };
  for (let n = 0; n < laboratories; n++) {
    const names = namesOf(8);
    const effects = names.map((name) => (name === 'A' ? Math.log(1.05) : 0));
    const { sides } = drawPaint(random, { names, effects, components, design: { weighing: 3 } });
    const [{ best, againstReference }] = compareSides([{ sides, reference: 'R' }]).groups;
    shown.add(best.notProvenWorse.length === 1 && best.notProvenWorse[0] === 'A');
    stronger.add(againstReference[0].finding === 'higher');
    raw += best.leader.difference - (best.leader.trial === 'A' ? Math.log(1.05) : 0);
    shrunk += best.leader.shrunk - (best.leader.trial === 'A' ? Math.log(1.05) : 0);
  }
  return [
    {
      shown: shown.share,
      toReach: '>= 0.70',
      provenStrongerThanR: stronger.share,
      leaderTooHighBy: raw / laboratories,
      shrunkTooHighBy: shrunk / laboratories,
    },
  ];
}

/** Conformance: packages exactly at the limit must be accepted no more often than the risk says. */
export function acceptance({ compareSides, decideAtOneRisk }, { laboratories, seed }) {
  const rows = [];
  for (const [packages, atLimit] of [
    [1, 1],
    [7, 1],
    [7, 7],
  ]) {
    for (const paints of [1, 3]) {
      for (const risk of [0.05, 0.025]) {
        const random = randomFrom(seed);
        const accepted = tally();
        for (let n = 0; n < laboratories; n++) {
          const names = namesOf(packages + 1);
          const components = { ...drawComponents(random), grind: 0 };
          const design = DESIGNS.balanced(random);
          const effects = names.map((_, i) => (i === 0 || i <= atLimit ? 0 : 0.5));
          const groups = Array.from({ length: paints }, (_, paint) => ({
            ...drawPaint(random, {
              names,
              // what sits at its limit in one paint is far inside in the others
              effects: paint === 0 ? effects : names.map((_, i) => (i === 0 ? 0 : 0.5)),
              components,
              design,
            }),
            reference: 'R',
          }));
          const comparisons = compareSides(groups.map(({ sides, reference }) => ({ sides, reference })));
          const byPackage = names.slice(1).map((trial) => ({
            name: trial,
            figures: comparisons.groups.map(({ againstReference }) => ({
              figure: againstReference.find((comparison) => comparison.trial === trial),
              limit: { lower: 0 },
            })),
          }));
          const decided = decideAtOneRisk(
            byPackage.map(({ name, figures }) => ({
              name,
              figures: figures.map(({ figure, limit }) => ({ ...figure, value: figure.difference, limit })),
            })),
            { rule: 'conformance-probability', risk },
          );
          accepted.add(
            decided.items.some(({ name, outcome }) => outcome === 'meets' && names.indexOf(name) <= atLimit),
          );
        }
        const toReach = packages === 1 ? `${risk} ± 0.01` : `<= ${risk}`;
        rows.push({ packages, atLimit, paints, risk, anyFalselyAccepted: accepted.share, toReach });
      }
    }
  }
  return rows;
}

/** Days as blocks: half-widths and coverage with a day effect of 1.5 %. */
export function blocks({ compareSides }, { laboratories, seed }) {
  const random = randomFrom(seed);
  const result = { named: { covered: tally(), width: 0 }, unnamed: { covered: tally(), width: 0 } };
  const components = { grind: 0, weighing: 0.008, drawdown: 0.003, spot: 0.002 };
  for (let n = 0; n < laboratories; n++) {
    const names = namesOf(6);
    const days = ['1', '2', '3', '4'];
    const effects = days.map(() => 0.015 * random.normal());
    const sides = {};
    for (const name of names) {
      const weighing = effects.map((effect) => readSide(random, effect, { ...components, grind: 0 }, { spot: 2 }));
      sides[name] = { weighing, day: days };
    }
    const bare = Object.fromEntries(Object.entries(sides).map(([name, { weighing }]) => [name, { weighing }]));
    for (const [key, given] of [
      ['named', sides],
      ['unnamed', bare],
    ]) {
      const { againstReference } = compareSides([{ sides: given, reference: 'R' }]).groups[0];
      for (const { interval } of againstReference) {
        result[key].covered.add(holds(interval, 0));
        result[key].width += (interval.high - interval.low) / 2 / againstReference.length;
      }
    }
  }
  return Object.entries(result).map(([day, { covered, width }]) => ({
    day,
    covered: covered.share,
    halfWidth: width / laboratories,
    toReach: day === 'named' ? '0.94-0.975, narrower' : '',
  }));
}

/** Planted outliers of six standard deviations of a unit, by level; and alarms where there is none. */
export function outliers({ findOutliers }, { laboratories, seed }) {
  return [undefined, 'weighing', 'drawdown', 'spot'].map((level) => {
    const random = randomFrom(seed);
    const named = tally();
    const alarms = tally();
    for (let n = 0; n < laboratories; n++) {
      const names = namesOf(random.whole(4, 8));
      const components = drawComponents(random);
      const design = { weighing: 3, drawdown: random.whole(2, 3), spot: random.whole(2, 4) };
      const { sides } = drawPaint(random, { names, effects: randomEffects(random, names), components, design });
      const at = { side: names[random.whole(0, names.length - 1)], weighing: random.whole(0, 2) };
      let path = `${at.side}.weighing[${at.weighing}]`;
      if (level) {
        // six standard deviations of what units of this level scatter by, parts of units included
        const { weighing, drawdown, spot } = components;
        const part = { spot: spot ** 2, drawdown: drawdown ** 2 + spot ** 2 / design.spot };
        const unit = Math.sqrt(level === 'weighing' ? weighing ** 2 + part.drawdown / design.drawdown : part[level]);
        const films = sides[at.side].weighing[at.weighing].drawdown;
        const shift = (film) => ({ spot: film.spot.map((value) => value + 6 * unit) });
        if (level === 'weighing') films.splice(0, films.length, ...films.map(shift));
        else if (level === 'drawdown') films.splice(0, 1, shift(films[0]));
        else films[0].spot[0] += 6 * unit;
        if (level !== 'weighing') path += '.drawdown[0]';
        if (level === 'spot') path += '.spot[0]';
      }
      const found = findOutliers([{ sides, reference: 'R' }]);
      if (level) named.add(found.outliers.some((outlier) => outlier.path === path));
      else alarms.add(found.outliers.length + found.exchanged.length > 0);
    }
    return level
      ? { planted: level, named: named.share, toReach: '>= 0.80' }
      : { planted: 'none', alarms: alarms.share, toReach: '<= 0.02' };
  });
}

/** Two units of different packages with their labels exchanged. */
export function exchangedLabels({ findOutliers }, { laboratories, seed }) {
  return [0.05, 0.1].map((apart) => {
    const random = randomFrom(seed);
    const named = tally();
    for (let n = 0; n < laboratories; n++) {
      const names = namesOf(random.whole(4, 8));
      const components = { grind: 0, weighing: 0.01, drawdown: 0.005, spot: 0.003 };
      const effects = names.map((_, i) => apart * i);
      const { sides } = drawPaint(random, { names, effects, components, design: { weighing: 3, spot: 2 } });
      const [a, b] = [sides.A.weighing[0], sides.B.weighing[1]];
      sides.A.weighing[0] = b;
      sides.B.weighing[1] = a;
      const { exchanged } = findOutliers([{ sides, reference: 'R' }]);
      named.add(exchanged.some(({ paths }) => paths.includes('A.weighing[0]') && paths.includes('B.weighing[1]')));
    }
    return { apart, named: named.share };
  });
}

/** Decided share of those who follow the advice, where the components are known. */
export function advice({ nextMeasurement, compareSides }, { laboratories, seed }) {
  const rows = [];
  for (const history of [false, true]) {
    const random = randomFrom(seed);
    const decided = tally();
    let minutes = 0;
    for (let n = 0; n < laboratories; n++) {
      const drawn = drawComponents(random);
      const components = { weighing: drawn.weighing, drawdown: drawn.drawdown, spot: drawn.spot };
      const unit = Math.hypot(...Object.values(components));
      const difference = unit * random.between(1, 4);
      const precision = { ...components, degreesOfFreedom: { weighing: 1e6, drawdown: 1e6, spot: 1e6 } };
      const plan = nextMeasurement({
        components,
        cost: { weighing: 30, drawdown: 10, spot: 1 },
        goal: { difference },
        ...(history && { precision }),
      });
      if (!plan.best) continue;
      minutes += plan.best.cost;
      const { sides } = drawPaint(random, {
        names: ['R', 'A'],
        effects: [0, difference],
        components: { ...components, grind: 0 },
        design: plan.best.design,
      });
      const options = history ? { precision } : {};
      const [{ againstReference }] = compareSides([{ sides, reference: 'R' }], options).groups;
      decided.add(againstReference[0].finding === 'higher');
    }
    const of = history ? 'known from history' : 'known for planning only';
    rows.push({ components: of, decided: decided.share, toReach: '0.80 ± 0.08', minutes: minutes / decided.all });
  }
  return rows;
}

/** Batches between alarms of the control chart, in control and after a shift; limits stated, or from 50 batches before. */
export function charts({ chartControls }, { laboratories, seed }) {
  return [0, 50].flatMap((before) =>
    [0, 1, 1.5, 2, 3].map((shift) => {
      const random = randomFrom(seed);
      const runs = Math.max(200, Math.round(laboratories / 4));
      const most = shift === 0 ? 4000 : 400;
      let signalled = 0;
      let together = 0;
      for (let n = 0; n < runs; n++) {
        const earlier = Array.from({ length: before }, () => random.normal());
        const later = Array.from({ length: most }, () => shift + random.normal());
        const { centre, standardDeviation } =
          before > 0 ? chartControls(earlier.map((value) => ({ value }))) : { centre: 0, standardDeviation: 1 };
        const chart = chartControls(
          later.map((value) => ({ value })),
          { centre, standardDeviation },
        );
        signalled += (chart.signals[0]?.index ?? most - 1) + 1;
        const any = chart.points.findIndex(({ beyond }) => beyond.length > 0);
        together += (any < 0 ? most - 1 : any) + 1;
      }
      return {
        limitsFrom: before === 0 ? 'stated' : `${before} batches`,
        shift,
        meanBatchesToSignal: signalled / runs,
        allChartsTogether: together / runs,
        toReach: shift === 0 ? '>= 300' : shift === 1.5 ? '<= 10' : '',
      };
    }),
  );
}

export const PARTS = {
  coverageByDesign,
  coverageWithHistory,
  coverageOfFloor,
  claimsBeyondEvidence,
  falseClaims,
  bestSets,
  trueLead,
  acceptance,
  blocks,
  outliers,
  exchangedLabels,
  advice,
  charts,
};

if (argv[1] === fileURLToPath(import.meta.url)) {
  const [laboratories = 2000, seed = 20260] = argv.slice(2, 4).map(Number);
  const only = argv[4]?.split(',');
  const path = argv[5] ? pathToFileURL(argv[5]).href : new URL('../dist/evidence.js', import.meta.url).href;
  const library = await import(path);
  for (const [name, part] of Object.entries(PARTS)) {
    if (only && !only.includes(name)) continue;
    const start = performance.now();
    const rows = part(library, { laboratories, seed });
    console.log(
      `\n${name} (${laboratories} laboratories, seed ${seed}, ${((performance.now() - start) / 1000).toFixed(1)} s)`,
    );
    console.table(
      rows.map((row) =>
        Object.fromEntries(
          Object.entries(row).map(([key, value]) => [
            key,
            typeof value === 'number' ? Number(value.toFixed(4)) : value,
          ]),
        ),
      ),
    );
  }
}
