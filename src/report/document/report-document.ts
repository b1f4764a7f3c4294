import type { Outcome } from '../../decision/index.js';
import type { Chart } from '../charts/chart.js';
import type { StyleName } from '../charts/style-name.js';
import type { Matrix } from './matrix.js';
import type { Table } from './table.js';

/** A report as plain data, of which HTML, Markdown and text are renderings; it knows nothing of studies. */
export interface ReportDocument {
  readonly title: string;
  readonly note?: string | undefined;
  /** What the whole report comes to, in one sentence. */
  readonly answer: string;
  readonly sections: readonly Section[];
  /** The last words, for the foot of a page. */
  readonly closing: string;
}

/** A part of the report under its heading. */
export interface Section {
  /** Unique in the document; a link can lead to it. */
  readonly id: string;
  readonly heading: string;
  readonly blocks: readonly Block[];
  /** Said for the record, to whoever the report is handed to; a terminal, where its maker reads, leaves it out. */
  readonly forTheRecord?: boolean;
}

/** What a section is made of. */
export type Block = Paragraph | List | Part | Matrix | Table | ChartGroup | Key;

/** A paragraph. */
export interface Paragraph {
  readonly kind: 'paragraph';
  readonly text: string;
}

/** A list of sentences. */
export interface List {
  readonly kind: 'list';
  readonly items: readonly ListItem[];
}

/** A sentence of a list; the outcome that it tells may colour it. */
export interface ListItem {
  readonly text: string;
  readonly outcome?: Outcome;
}

/** Blocks under a heading of their own, kept together on a page. */
export interface Part {
  readonly kind: 'part';
  readonly heading: string;
  readonly blocks: readonly Block[];
}

/** Charts under one caption: panels that compare, or a plate about one thing. Text shows their descriptions at most. */
export interface ChartGroup {
  readonly kind: 'charts';
  readonly layout: 'panels' | 'plate';
  readonly caption: string;
  readonly panels: readonly { readonly heading?: string; readonly chart: Chart }[];
}

/** The series with the mark by which every chart shows them. */
export interface Key {
  readonly kind: 'key';
  readonly entries: readonly { readonly style: StyleName; readonly name: string; readonly note: string }[];
}

/** A paragraph of this text. */
export function paragraph(text: string): Paragraph {
  return { kind: 'paragraph', text };
}

/** A list of these sentences. */
export function list(texts: readonly string[]): List {
  return { kind: 'list', items: texts.map((text) => ({ text })) };
}
