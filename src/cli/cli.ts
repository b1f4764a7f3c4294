#!/usr/bin/env node
import { Command, Option } from 'commander';
import { REPORT_LENGTHS } from '../report/index.js';
import { COLOUR_FORMATS, colours } from './colours.js';
import { compare } from './compare.js';
import { endWith } from './end-with.js';
import { inspect } from './inspect.js';
import { VERSION } from './version.js';
import { viewingArgument } from './viewing-argument.js';

const program = new Command('tintladder')
  .description('Relative tinting strength, rub-out and colour difference from spectrophotometer exports.')
  .version(VERSION)
  .exitOverride();

program
  .command('compare')
  .argument('<study>', 'description of the comparison, JSON or YAML; it names its exports; - for standard input')
  .description('evaluate a comparison and say which package meets every criterion')
  .option('--out <dir>', 'write the report there as HTML, Markdown, CSV and JSON')
  .addOption(new Option('--report <length>', 'how much HTML and Markdown hold').choices(REPORT_LENGTHS).default('full'))
  .option('--json', 'print the result as JSON instead of the table')
  .option('--quiet', 'print nothing; the exit code tells')
  .option('--exit-for <package>', 'whose outcome the exit code tells: all, recommended, or the id of a package', 'all')
  .action(compare);

program
  .command('inspect')
  .argument('<file...>', 'measurement exports, folders of them, or - for standard input')
  .description('show what is in exports: format, grid, units assumed, readings, notes')
  .option('--json', 'print what was read as JSON, one line per file')
  .action(inspect);

program
  .command('colours')
  .description('CIELAB of the spectra on standard input, one line each, as they come')
  .addOption(
    new Option('--viewing <illuminant/observer>', 'such as D65/10').argParser(viewingArgument).makeOptionMandatory(),
  )
  .addOption(new Option('--format <name>', 'how the lines are written').choices(COLOUR_FORMATS).default('csv'))
  .action(colours);

program.addHelpText(
  'after',
  `
Examples:
  tintladder compare study.json
  tintladder compare study.yaml --out report --report short
  tintladder compare study.json --json > result.json
  tintladder compare study.yaml --quiet --exit-for recommended
  tintladder inspect readings.csv
  tintladder inspect exports/ --json
  tintladder colours --viewing D65/10 < readings.csv > colours.csv

Exit codes:
  0 every package (or the chosen one) meets every criterion   1 something fails   2 something is undecided
  64 the command line is wrong         65 a file or study is wrong        66 an input can't be opened
  70 a fault of the program itself     73 an output can't be created      74 reading or writing failed

NO_COLOR is honoured; a pipe gets no colour and no progress.`,
);

// A reader that has seen enough, such as head, closes the pipe: that is no fault.
process.stdout.on('error', (error) => endWith(error));

try {
  await program.parseAsync();
} catch (error) {
  endWith(error);
}
