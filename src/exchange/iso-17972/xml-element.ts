import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { TintladderError } from '../../core/index.js';

/** One element of an XML text; names without their prefixes. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly text: string;
  readonly children: readonly XmlElement[];
  /** Line of its start tag. */
  readonly line: number;
}

const METADATA = XMLParser.getMetaDataSymbol() as unknown as symbol;

/**
 * The root element of an XML text.
 *
 * A document type is refused, and with it every entity and external reference; only the five entities of XML itself and characters by number
 * are replaced.
 *
 * @throws TintladderError `malformed`; `truncated` where the text ends within an element
 */
export function parseXml(text: string): XmlElement {
  const declaration = text.search(/<!(?:DOCTYPE|ENTITY)/i);
  if (declaration >= 0) {
    throw new TintladderError('malformed', {
      path: placeAt(text, declaration),
      received: text.slice(declaration, declaration + 60),
      expected: 'XML without document type and entity declarations',
    });
  }
  const valid = XMLValidator.validate(text);
  if (valid !== true) throw faultOf(text, valid.err);
  const parser = new XMLParser({
    preserveOrder: true,
    captureMetaData: true,
    ignoreAttributes: false,
    attributeNamePrefix: '',
    removeNSPrefix: true,
    parseTagValue: false,
    parseAttributeValue: false,
    htmlEntities: true,
    maxNestedTags: 50,
  });
  const lines = lineStarts(text);
  let nodes: unknown;
  try {
    nodes = parser.parse(text);
  } catch (error) {
    const received = error instanceof Error ? error.message : String(error);
    throw new TintladderError('malformed', { path: 'line 1, column 1', received, expected: 'well-formed XML' });
  }
  const root = toElements(nodes, lines).find(({ name }) => !name.startsWith('?'));
  if (!root)
    throw new TintladderError('malformed', {
      path: 'line 1, column 1',
      received: text,
      expected: 'an element',
    });
  return root;
}

function faultOf(text: string, { msg, line, col }: { msg: string; line: number; col: number }): TintladderError {
  const path = `line ${line}, column ${col}`;
  const root = /<([A-Za-z_][\w.:-]*)/.exec(text)?.[1];
  if (root !== undefined && !text.trimEnd().endsWith(`</${root}>`) && !text.trimEnd().endsWith('/>')) {
    return new TintladderError('truncated', {
      path: placeAt(text, text.length),
      received: '',
      expected: `</${root}>`,
      hint: 'The file is cut off; export it again.',
    });
  }
  return new TintladderError('malformed', { path, received: msg, expected: 'well-formed XML' });
}

type RawNode = Readonly<Record<string | symbol, unknown>>;

function toElements(nodes: unknown, lines: readonly number[]): XmlElement[] {
  if (!Array.isArray(nodes)) return [];
  return nodes.flatMap((node: RawNode) => {
    const name = Object.keys(node).find((key) => key !== ':@' && key !== '#text');
    if (name === undefined) return [];
    const content = node[name];
    const { startIndex = 0 } = (node[METADATA] ?? {}) as { startIndex?: number };
    return [
      {
        name,
        attributes: new Map(
          Object.entries((node[':@'] ?? {}) as Record<string, unknown>).map(([key, value]) => [key, String(value)]),
        ),
        text: textOf(content),
        children: toElements(content, lines),
        line: lineAt(lines, startIndex),
      },
    ];
  });
}

function textOf(content: unknown): string {
  if (!Array.isArray(content)) return '';
  return content
    .flatMap((node: RawNode) => (typeof node['#text'] === 'string' ? [node['#text']] : []))
    .join(' ')
    .trim();
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}

function lineAt(starts: readonly number[], index: number): number {
  let low = 0;
  let high = starts.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (starts[middle] <= index) low = middle;
    else high = middle;
  }
  return low + 1;
}

function placeAt(text: string, index: number): string {
  const starts = lineStarts(text);
  const line = lineAt(starts, index);
  return `line ${line}, column ${index - starts[line - 1] + 1}`;
}

/** All elements of a name below an element, in the order of the text. */
export function descendants(element: XmlElement, name: string): XmlElement[] {
  return element.children.flatMap((child) => [...(child.name === name ? [child] : []), ...descendants(child, name)]);
}

/** The first child of that name. */
export function childOf(element: XmlElement | undefined, name: string): XmlElement | undefined {
  return element?.children.find((child) => child.name === name);
}
