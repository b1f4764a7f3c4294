import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, vi } from 'vitest';
import { parse } from 'yaml';

// The command as people run it: a process with arguments, streams and an exit code. It is bundled from the source first, so
// that no build need be there. A process takes about a second to start, and longer on a busy machine.

export const SCREENING = 'examples/dispersant-screening/study.json';

/** A bundle of the command and a folder for files, both made anew for a test file and gone after it. */
export function theCommand() {
  vi.setConfig({ testTimeout: 120_000 });
  const folder = mkdtempSync(join(tmpdir(), 'tintladder-cli-'));
  // The version is read from the package.json that stands one folder above the bundle.
  const bundle = mkdtempSync('.test-build-');
  const command = join(bundle, 'cli.js');

  beforeAll(async () => {
    const format = { bundle: true, format: 'esm', platform: 'node', packages: 'external', splitting: true } as const;
    await build({ ...format, entryPoints: ['src/cli/cli.ts'], outdir: bundle });
  });

  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
    rmSync(bundle, { recursive: true });
  });

  return {
    folder,
    command,

    run(args: readonly string[], input?: string) {
      const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...args], { encoding: 'utf8', input });
      return { status, stdout, stderr };
    },

    /** A file in the folder. */
    write(name: string, text: string): string {
      writeFileSync(join(folder, name), text);
      return join(folder, name);
    },

    /** A copy of the screening study with something changed, beside which its readings are found. */
    variant(name: string, change: (study: Record<string, never>) => object): string {
      const study = parse(readFileSync(SCREENING, 'utf8'));
      const measurements = [join(process.cwd(), 'examples/dispersant-screening/readings.csv')];
      return this.write(name, JSON.stringify({ ...study, measurements, ...change(study) }));
    },
  };
}

/** The study with these packages alone. */
export const only =
  (...ids: string[]) =>
  (study: Record<string, never>) => ({
    packages: (study.packages as { id: string }[]).filter(({ id }) => ids.includes(id)),
  });
