import { formatCount } from '../../core/internal.js';
import type { Block } from '../document/report-document.js';
import { list } from '../document/report-document.js';
import type { Table } from '../document/table.js';
import { textCell } from '../document/table-cell.js';
import type { ReportIdentity } from '../subject/report-identity.js';
import type { SectionBuilder } from './section-builder.js';

/** Date, author, version and inputs of the report, and how many readings stand behind it. */
export const identitySection: SectionBuilder = ({ result, identity }) => {
  const { date, author, version } = identity;
  const readings = result.cells.reduce((sum, { replicates }) => sum + replicates.unrubbed + replicates.rubbed, 0);
  const unused = result.unusedReadings.length;
  const texts = [
    ...(date === undefined ? [] : [`Date: ${date}`]),
    ...(author === undefined ? [] : [`Made by: ${author}`]),
    ...(version === undefined ? [] : [`Made with: ${version}`]),
    `Readings: ${formatCount(readings, 'reading')} of tints compared, ${unused === 0 ? 'none' : unused} left unused`,
  ];
  const table = inputsTable(identity);
  const blocks: readonly Block[] = [list(texts), ...(table ? [table] : [])];
  return { id: 'identity', heading: 'About this report', forTheRecord: true, blocks };
};

function inputsTable({ inputs = [] }: ReportIdentity): Table | undefined {
  if (inputs.length === 0) return undefined;
  return {
    kind: 'table',
    caption: 'The files that went into this report, with a digest of each.',
    columns: [{ heading: 'File' }, { heading: 'Digest' }],
    groups: [{ rows: inputs.map(({ name, digest }) => [textCell(name), textCell(digest)]) }],
  };
}
