// Bundles examples/browser with the package as it is built in dist/ into examples/browser/dist: three files that need no
// server and load nothing.
import { copyFileSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';

const source = join(import.meta.dirname, '..', 'examples', 'browser');
const out = join(source, 'dist');

mkdirSync(out, { recursive: true });
const { metafile } = await build({
  entryPoints: [join(source, 'main.mjs')],
  outfile: join(out, 'main.js'),
  bundle: true,
  minify: true,
  format: 'iife',
  target: 'es2022',
  loader: { '.csv': 'text' },
  // the package's chunks import each other for order alone, and none has side effects
  logOverride: { 'ignored-bare-import': 'silent' },
  metafile: true,
});
for (const file of ['index.html', 'style.css']) copyFileSync(join(source, file), join(out, file));
const [{ bytes }] = Object.values(metafile.outputs);
console.log(`examples/browser/dist: open index.html; its script has ${Math.round(bytes / 1000)} kB`);
