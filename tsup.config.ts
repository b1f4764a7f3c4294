import { defineConfig } from 'tsup';

export default defineConfig({
  entry: {
    index: 'src/index.ts',
    colorimetry: 'src/colorimetry/index.ts',
    strength: 'src/strength/index.ts',
    fits: 'src/fits/index.ts',
    evidence: 'src/evidence/index.ts',
    rubout: 'src/rubout/index.ts',
    exchange: 'src/exchange/index.ts',
    study: 'src/study/index.ts',
    production: 'src/production/index.ts',
    report: 'src/report/index.ts',
    cli: 'src/cli/cli.ts',
  },
  format: 'esm',
  target: 'es2022',
  platform: 'neutral',
  dts: true,
  clean: true,
  // These are made of many small files, which take longer to load than everything of ours; bundled, the parts that are used load in a
  // few milliseconds. scripts/third-party-licences.mjs puts their licences beside them.
  noExternal: ['colorjs.io', 'mathjs', 'zod', 'fast-xml-parser', 'd3-scale', 'd3-shape'],
  metafile: true,
});
