// Runs every notebook of examples/notebooks from clean on Deno's Jupyter kernel, against the package as packed from dist/. A
// cell that throws fails the run; answers are assertions, so an answer that doesn't hold throws.
// `--keep DIR` writes the executed notebooks, with their figures, into DIR.
import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { createDenoProject } from './deno-project.mjs';

const notebooks = join(import.meta.dirname, '..', 'examples', 'notebooks');
const { values } = parseArgs({ options: { keep: { type: 'string' } } });

/** Executes a notebook in place; its folder is the kernel's working folder. */
const EXECUTE = `
import os, sys, nbformat
from nbclient import NotebookClient
from nbclient.exceptions import CellExecutionError
path = sys.argv[1]
notebook = nbformat.read(path, as_version=4)
nbformat.validate(notebook)
client = NotebookClient(notebook, timeout=120, record_timing=False, resources={"metadata": {"path": os.path.dirname(path)}})
try:
    client.execute()
except CellExecutionError as error:
    sys.exit(str(error))
finally:
    nbformat.write(notebook, path)
`;

const hasClient = (python) => spawnSync(python, ['-c', 'import nbclient'], { stdio: 'ignore' }).status === 0;

/** A Python that has nbclient, the Jupyter project's own notebook runner; from the Debian package where none has. */
function findPython() {
  const candidates = [process.env.PYTHON, 'python3', '/usr/bin/python3'].filter(Boolean);
  const found = candidates.find(hasClient);
  if (found) return found;
  const elevate = process.getuid?.() === 0 ? [] : ['sudo', '-n'];
  for (const args of [
    ['apt-get', 'update', '-qq'],
    ['apt-get', 'install', '-y', '-qq', '--no-install-recommends', 'python3-nbclient'],
  ]) {
    const [command, ...rest] = [...elevate, ...args];
    console.log(`> ${[command, ...rest].join(' ')}`);
    spawnSync(command, rest, {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  }
  if (hasClient('/usr/bin/python3')) return '/usr/bin/python3';
  throw new Error(
    'The notebooks are executed by nbclient. Install it (apt-get install python3-nbclient, or pip install nbclient) and set PYTHON if it is not the python3 on the path.',
  );
}

/** What a committed notebook must be: no outputs, an id for every cell, answers that assert. */
function faultsOf({ cells, metadata }) {
  const code = cells.filter(({ cell_type }) => cell_type === 'code');
  const answers = code.filter(({ metadata: { tags = [] } }) => tags.includes('answer'));
  const ids = cells.map(({ id }) => id);
  const exercises = cells.filter(({ source }) => /^### Exercise /m.test(source.join(''))).length;
  return [
    metadata.kernelspec?.name !== 'deno' && 'its kernel is not deno',
    code.some(({ outputs, execution_count }) => outputs.length > 0 || execution_count !== null) && 'it holds outputs',
    (ids.includes(undefined) || new Set(ids).size < ids.length) && 'its cell ids are not unique',
    exercises === 0 && 'it has no exercise',
    answers.length !== exercises && `it has ${exercises} exercises and ${answers.length} answers`,
    answers.some(({ source }) => !source.join('').includes('assert')) && 'an answer asserts nothing',
  ].filter(Boolean);
}

/** Cells that were to draw a figure: those from which none came, and those that drew what is no number. */
function figureFaultsOf({ cells }) {
  const drawing = cells
    .filter(({ cell_type, source }) => cell_type === 'code' && [source].flat().join('').includes('await show('))
    .map(({ id, outputs }) => [id, outputs.flatMap(({ data }) => data?.['image/svg+xml'] ?? []).join('')]);
  return {
    missing: drawing.filter(([, svg]) => svg === '').map(([id]) => `${id}: no figure`),
    wrong: drawing
      .filter(([, svg]) => /NaN|undefined|Infinity/.test(svg))
      .map(([id]) => `${id}: a coordinate that is no number`),
  };
}

/** The kernel now and then reports itself idle before its last output is through, and the client then misses that output. */
const RUNS_FOR_A_LOST_FIGURE = 4;

/** Runs a notebook from clean; again only where every cell ran and nothing but a figure is missing. Gives what is wrong. */
function faultsOfRun(name, folder, execute) {
  for (let left = RUNS_FOR_A_LOST_FIGURE; ; left--) {
    cpSync(join(notebooks, name), join(folder, name));
    const { status, stderr } = execute(name);
    if (status !== 0) return [stderr];
    const { missing, wrong } = figureFaultsOf(JSON.parse(readFileSync(join(folder, name), 'utf8')));
    if (missing.length === 0 || wrong.length > 0 || left === 1) return [...wrong, ...missing];
    console.log(`again  ${name}: ${missing.join('; ')}`);
  }
}

const names = readdirSync(notebooks).filter((name) => name.endsWith('.ipynb'));
if (names.length === 0) throw new Error(`There is no notebook in ${notebooks}.`);
const sources = new Map(names.map((name) => [name, JSON.parse(readFileSync(join(notebooks, name), 'utf8'))]));
for (const [name, notebook] of sources) {
  const faults = faultsOf(notebook);
  if (faults.length > 0) throw new Error(`${name}: ${faults.join('; ')}.`);
}

const python = findPython();
const { folder, deno, env, remove } = createDenoProject('notebooks');
try {
  const kernel = join(folder, 'jupyter', 'kernels', 'deno');
  mkdirSync(kernel, { recursive: true });
  const argv = [deno, 'jupyter', '--kernel', '--conn', '{connection_file}'];
  writeFileSync(join(kernel, 'kernel.json'), JSON.stringify({ argv, display_name: 'Deno', language: 'typescript' }));
  const execute = (name) =>
    spawnSync(python, ['-c', EXECUTE, join(folder, name)], {
      env: { ...env, JUPYTER_PATH: join(folder, 'jupyter') },
      encoding: 'utf8',
    });

  // A run that could not fail would prove nothing: the first notebook with its first answer turned round must stop.
  const [[first, notebook]] = sources;
  const wrong = structuredClone(notebook);
  wrong.cells.find(({ metadata: { tags = [] } }) => tags.includes('answer')).source.push('\nassert.equal(1, 2);');
  writeFileSync(join(folder, 'wrong.ipynb'), JSON.stringify(wrong));
  const { status, stderr } = execute('wrong.ipynb');
  if (status === 0 || !stderr.includes('1 !== 2'))
    throw new Error(`A wrong answer in ${first} went unnoticed.\n${stderr}`);

  let failed = 0;
  for (const name of names) {
    const started = performance.now();
    const faults = faultsOfRun(name, folder, execute);
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    console.log(`${faults.length === 0 ? 'holds' : 'FAILS'}  ${name}, ${seconds} s`);
    if (faults.length > 0) {
      failed += 1;
      console.log(faults.join('\n').trim());
    }
    if (values.keep) {
      mkdirSync(resolve(values.keep), { recursive: true });
      cpSync(join(folder, name), join(resolve(values.keep), name));
    }
  }
  console.log(
    `${names.length} notebooks on ${execFileSync(deno, ['--version'], { env, encoding: 'utf8' }).split('\n')[0]}`,
  );
  if (failed > 0) process.exitCode = 1;
} finally {
  remove();
}
