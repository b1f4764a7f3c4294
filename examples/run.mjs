// Runs the command on one of the examples: `node examples/run.mjs dispersant-screening`. The command's exit code tells
// whether a package fails or is undecided, which the examples are made to show; here only a real fault is a failure.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const [, , example = 'dispersant-screening', file = 'study.json'] = process.argv;
const study = join('examples', example, file);
const out = join('examples', example, 'report');
const command = [join('dist', 'cli.js'), 'compare', study, '--out', out];
const { status } = spawnSync(process.execPath, command, { cwd: root, stdio: 'inherit' });
process.exitCode = status !== null && status <= 2 ? 0 : (status ?? 1);
