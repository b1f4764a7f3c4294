import type { StudyResult } from '../../study/index.js';
import { marker, type SeriesStyle, styleOf } from '../figures/series-style.js';
import { element, type Markup } from './element.js';

/** The packages with the mark by which every figure shows them. */
export function packageKey(result: StudyResult, styles: ReadonlyMap<string, SeriesStyle>): Markup {
  return element(
    'ul',
    { class: 'key' },
    result.packages.map(({ package: { id, name, description }, isReference }) =>
      element(
        'li',
        {},
        element(
          'svg',
          { viewBox: '0 0 40 14', width: 40, height: 14, 'aria-hidden': 'true', focusable: 'false' },
          element('path', {
            class: `${styleOf(styles, id).className} curve`,
            d: 'M1 7H39',
            'stroke-dasharray': styleOf(styles, id).dash,
          }),
          marker(20, 7, styleOf(styles, id)),
        ),
        element(
          'span',
          {},
          element('b', {}, name),
          ` (${id}${isReference ? ', reference' : ''})`,
          description && `. ${description}`,
        ),
      ),
    ),
  );
}
