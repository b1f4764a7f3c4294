import type { SectionBuilder } from './section-builder.js';

/** The packages with the mark by which every chart shows them. */
export const packagesSection: SectionBuilder = ({ result, style }) => ({
  id: 'packages',
  heading: 'Packages and their marks',
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
