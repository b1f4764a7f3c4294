// An empty project as a reader has it: the packed package and Deno, both from npm, in a temporary folder.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');

/**
 * Packs the package as it is built in dist/ and installs it beside Deno. `npm:tintladder` then means this build: with
 * `nodeModulesDir: manual` Deno takes npm packages from the project's node_modules and downloads none.
 *
 * @returns folder, path of the deno program, environment that keeps Deno's cache inside the folder, and `remove`
 */
export function createDenoProject(name) {
  const folder = mkdtempSync(join(tmpdir(), `tintladder-${name}-`));
  const remove = () => rmSync(folder, { recursive: true, force: true });
  try {
    const npm = (args, cwd) =>
      execFileSync('npm', args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] });
    const [{ filename }] = JSON.parse(npm(['pack', '--json', '--pack-destination', folder], root));
    writeFileSync(join(folder, 'package.json'), JSON.stringify({ name, private: true, type: 'module' }));
    writeFileSync(join(folder, 'deno.json'), JSON.stringify({ nodeModulesDir: 'manual' }));
    npm(['install', '--no-audit', '--no-fund', '--silent', `./${filename}`, 'deno@2'], folder);
    // what the npm package `deno` starts: asked of Deno itself, so that a kernel needs no Node around it
    const env = { ...process.env, DENO_DIR: join(folder, '.deno'), DENO_NO_UPDATE_CHECK: '1', NO_COLOR: '1' };
    const wrapper = join(folder, 'node_modules', '.bin', 'deno');
    const deno = execFileSync(wrapper, ['eval', 'console.log(Deno.execPath())'], { env, encoding: 'utf8' }).trim();
    return { folder, deno, env, remove };
  } catch (error) {
    remove();
    throw error;
  }
}
