/** Markup that is finished: every text in it has been escaped. Only {@link element} and {@link fragment} make it. */
export interface Markup {
  readonly markup: string;
}

/** What may stand inside an element. Plain text is escaped; `undefined` and `false` leave nothing behind. */
export type Child = Markup | string | number | undefined | false | readonly Child[];

/** Attributes by name; `undefined` and `false` leave the attribute out, `true` writes it without a value. */
export type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

const VOID_ELEMENTS = new Set(['meta']);
/** SVG elements that close themselves, which keeps a file of many curves small. */
const SHAPES = new Set(['circle', 'line', 'path', 'rect']);

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text without any character that needs a second look, which most is: the quick way out. */
const HARMLESS = /^[ !#-%(-;=?-~\u00a0-\u2029\u2030-\u2065\u206a-\ud7ff]*$/;

/**
 * Text made safe for HTML and SVG, in an element as in a quoted attribute. Control characters, those that turn the
 * direction of what follows, and those that XML has no place for become visible.
 */
export function escapeHtml(text: string): string {
  if (HARMLESS.test(text)) return text;
  return text
    .replace(/[&<>"']/g, (character) => ENTITIES[character])
    .replace(/[\p{Cc}\p{Cs}\u202a-\u202e\u2066-\u2069\ufffe\uffff]/gu, (character) =>
      /[\t\n]/.test(character) ? character : '\ufffd',
    );
}

/** One HTML or SVG element. */
export function element(name: string, attributes: Attributes = {}, ...children: readonly Child[]): Markup {
  let markup = `<${name}`;
  for (const [attribute, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    markup +=
      value === true ? ` ${attribute}` : ` ${attribute}="${typeof value === 'string' ? escapeHtml(value) : value}"`;
  }
  if (SHAPES.has(name)) return { markup: `${markup}/>` };
  markup += '>';
  return { markup: VOID_ELEMENTS.has(name) ? markup : `${markup}${fragment(...children).markup}</${name}>` };
}

/** Several pieces without an element around them. */
export function fragment(...children: readonly Child[]): Markup {
  let markup = '';
  for (const child of children) {
    if (child === undefined || child === false) continue;
    if (typeof child === 'string') markup += escapeHtml(child);
    else if (typeof child === 'number') markup += String(child);
    else if ('markup' in child) markup += child.markup;
    else markup += fragment(...child).markup;
  }
  return { markup };
}
