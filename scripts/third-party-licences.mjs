// Writes dist/THIRD-PARTY-LICENCES.txt: name, version, licence and notice of every package that the build took into dist/. Fails if one
// has no licence that allows it.
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const METAFILE = 'dist/metafile-esm.json';

const { outputs } = JSON.parse(readFileSync(METAFILE, 'utf8'));
// What was read and then left out by the bundler is not distributed.
const used = Object.values(outputs).flatMap(({ inputs }) =>
  Object.entries(inputs).flatMap(([path, { bytesInOutput }]) => (bytesInOutput > 0 ? [path] : [])),
);
const folders = new Set(used.flatMap((path) => path.match(/^.*node_modules\/(?:@[^/]+\/)?[^/]+/)?.[0] ?? []));
const texts = [...folders].sort().map((folder) => {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  if (!license || !/^(MIT|ISC|BSD-[23]-Clause|Apache-2\.0)$/.test(license))
    throw new Error(`${name} has the licence ${license}`);
  const text = file
    ? readFileSync(join(folder, file), 'utf8').trim()
    : `Licence: ${license}; the package carries no text.`;
  const notice = readdirSync(folder).find((entry) => /^notice/i.test(entry));
  const notices = notice ? `\n${readFileSync(join(folder, notice), 'utf8').trim()}\n` : '';
  return `${name} ${version} (${license})\n\n${text}\n${notices}`;
});
writeFileSync('dist/THIRD-PARTY-LICENCES.txt', texts.join(`\n${'-'.repeat(80)}\n\n`));
rmSync(METAFILE);
