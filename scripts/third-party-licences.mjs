// Writes dist/THIRD-PARTY-LICENCES.txt: the licence of every package that the build took into dist/. Fails if one has none.
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const METAFILE = 'dist/metafile-esm.json';

const { inputs } = JSON.parse(readFileSync(METAFILE, 'utf8'));
const folders = new Set(
  Object.keys(inputs).flatMap((path) => path.match(/^.*node_modules\/(?:@[^/]+\/)?[^/]+/)?.[0] ?? []),
);
const texts = [...folders].sort().map((folder) => {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  if (!license || !/^(MIT|ISC|BSD-[23]-Clause)$/.test(license)) throw new Error(`${name} has the licence ${license}`);
  const text = file
    ? readFileSync(join(folder, file), 'utf8').trim()
    : `Licence: ${license}; the package carries no text.`;
  return `${name} ${version} (${license})\n\n${text}\n`;
});
writeFileSync('dist/THIRD-PARTY-LICENCES.txt', texts.join(`\n${'-'.repeat(80)}\n\n`));
rmSync(METAFILE);
