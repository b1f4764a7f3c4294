import type { PackageResult } from '../../study/index.js';
import { type Block, paragraph, type Section } from '../document/report-document.js';
import { inOrder } from '../subject/package-order.js';
import type { ReportContext } from '../subject/report-context.js';
import { colourTable } from './colour-table.js';
import { figureTables } from './figure-tables.js';
import { rubOutFindings } from './rub-out-findings.js';
import type { SectionBuilder } from './section-builder.js';

/** Everything about one package in a section of its own, in the order of the overview. */
export const packageDetails: SectionBuilder = (context) =>
  inOrder(context.result).map((item, i) => packageSection(item, i, context));

function packageSection(item: PackageResult, index: number, context: ReportContext): Section {
  const { id, description } = item.package;
  const own = context.rows.filter(({ cell }) => cell.package === id);
  const blocks: (Block | undefined)[] = [
    description === undefined ? undefined : paragraph(description),
    ...figureTables(item, own),
    own.length > 0 ? colourTable(own) : undefined,
    ...rubOutFindings(own),
  ];
  return {
    id: `package-${index + 1}`,
    heading: headingOf(item),
    blocks: blocks.filter((block) => block !== undefined),
  };
}

/** Name and id, by which files and charts call it, so that two packages of one name can be told apart. */
function headingOf({ package: { id, name }, isReference }: PackageResult): string {
  const marks = [...(id === name ? [] : [id]), ...(isReference ? ['reference'] : [])];
  return marks.length === 0 ? name : `${name} (${marks.join(', ')})`;
}
