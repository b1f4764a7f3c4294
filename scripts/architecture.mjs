// The figures of the layout: files and lines for each room, the longest files, imports past a room's door, rings of folders.
// Duplicate lines are not counted here.
import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, normalize } from 'node:path';

const files = readdirSync('src', { recursive: true })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => join('src', name));
const DOORS = ['index.ts', 'internal.ts'];
const roomOf = (path) => (path.split('/').length > 2 ? path.split('/')[1] : '(root)');
const linesOf = (path) => readFileSync(path, 'utf8').trimEnd().split('\n').length;
const isTable = (path) => path.includes('/tables/');

const importsOf = (path) =>
  [
    ...readFileSync(path, 'utf8').matchAll(/^(?:import|export)\b[^;]*?\bfrom '(\.[^']+)'|\bimport\('(\.[^']+)'\)/gm),
  ].map(([, from, dynamic]) => normalize(join(dirname(path), from ?? dynamic)).replace(/\.js$/, '.ts'));

const median = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];

const rooms =
  Map.groupBy?.(files, roomOf) ??
  files.reduce((map, file) => map.set(roomOf(file), [...(map.get(roomOf(file)) ?? []), file]), new Map());
console.log('room           files  lines  median  longest');
for (const [room, list] of [...rooms].sort()) {
  const lines = list.map(linesOf);
  const total = lines.reduce((sum, count) => sum + count, 0);
  console.log(
    room.padEnd(14),
    String(list.length).padStart(5),
    String(total).padStart(6),
    String(median(lines)).padStart(7),
    String(Math.max(...lines)).padStart(8),
  );
}

const counted = files.filter((file) => !isTable(file));
const all = counted.map(linesOf);
console.log(`\n${counted.length} files without tables, median ${median(all)} lines, longest ${Math.max(...all)}`);
for (const file of counted.filter((one) => linesOf(one) > 250)) console.log(`  over 250: ${file} (${linesOf(file)})`);

const past = files.flatMap((file) =>
  importsOf(file)
    .filter((target) => roomOf(target) !== roomOf(file) && !DOORS.includes(basename(target)))
    .map((target) => `${file} -> ${target}`),
);
console.log(`imports past a door: ${past.length}`);
for (const line of past) console.log(`  ${line}`);

const next = new Map();
for (const file of files) {
  const from = dirname(file);
  const isDoor = DOORS.includes(basename(file));
  const targets = importsOf(file).map(dirname);
  next.set(
    from,
    new Set([
      ...(next.get(from) ?? []),
      ...targets.filter((to) => to !== from && !(isDoor && to.startsWith(`${from}/`))),
    ]),
  );
}
const rings = new Set();
const visit = (at, trail) => {
  if (trail.includes(at)) {
    const ring = trail.slice(trail.indexOf(at));
    const first = ring.indexOf([...ring].sort()[0]);
    rings.add([...ring.slice(first), ...ring.slice(0, first)].join(' -> '));
    return;
  }
  for (const to of next.get(at) ?? []) visit(to, [...trail, at]);
};
for (const folder of next.keys()) visit(folder, []);
console.log(`rings of folders: ${rings.size}`);
for (const ring of rings) console.log(`  ${ring}`);
