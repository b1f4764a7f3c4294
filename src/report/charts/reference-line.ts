/** How a line is drawn: a limit dashed, a reference solid. */
export const REFERENCE_LINE_KINDS = ['limit', 'reference'] as const;

/** A value that the figures of a chart are compared with, drawn as a line across it: a limit dashed, a reference solid. */
export interface ReferenceLine {
  readonly value: number;
  readonly label: string;
  readonly kind: (typeof REFERENCE_LINE_KINDS)[number];
}
