import type { SectionBuilder } from './section-builder.js';

/** The packages with the mark by which every chart shows them. */
export const marksSection: SectionBuilder = ({ result, style }) => ({
  id: 'marks',
  heading: 'Marks of the charts',
  blocks: [
    {
      kind: 'key',
      entries: result.packages.map(({ package: { id, name, description }, isReference }) => ({
        style: style(id),
        name,
        note: `(${id}${isReference ? ', reference' : ''})${description ? `. ${description}` : ''}`,
      })),
    },
  ],
});
