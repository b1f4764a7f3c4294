import { TintladderError } from '../../core/index.js';
import type { FileContext } from '../table/file-context.js';
import type { PlannedColumn } from '../table/heading.js';
import { columnsOf } from '../table/table-plan.js';
import { cellPlace } from '../text/cell-place.js';
import { notANumber, parseFileNumber } from '../text/file-number.js';
import { isWavelength } from '../wavelength/wavelength-label.js';

/** Whether a field holds the wavelength of the field behind it. */
export function isWavelengthField(field: string): boolean {
  return /^SPECTRAL_NM$/i.test(field);
}

/** Columns in which each `SPECTRAL_NM`, `SPECTRAL_PCT` pair has become one, of the wavelength that the row gives. */
export function columnsByWavelength(
  fields: readonly string[],
  cells: readonly string[],
  line: number,
  file: FileContext,
): PlannedColumn[] {
  let wavelength: { readonly value: number; readonly text: string } | undefined;
  return fields.flatMap((field, i): PlannedColumn[] => {
    if (isWavelengthField(field)) {
      const value = parseFileNumber(cells[i], file.style);
      if (value === undefined) throw notANumber(cells[i], file.style, cellPlace(line, i + 1));
      wavelength = { value, text: cells[i] };
      return [];
    }
    const kind = /^SPECTRAL_(PCT|DEC)$/i.exec(field)?.[1].toUpperCase();
    if (kind === undefined) return columnsOf([field]);
    if (wavelength === undefined) {
      throw new TintladderError('malformed', {
        path: cellPlace(line, i + 1),
        received: field,
        expected: 'SPECTRAL_NM before it',
      });
    }
    const { value, text } = wavelength;
    wavelength = undefined;
    if (!isWavelength(value)) {
      throw new TintladderError('grid-invalid', {
        path: cellPlace(line, i),
        received: value,
        expected: 'a wavelength in nm',
      });
    }
    const label = {
      wavelength: value,
      decimals: text.split('.')[1]?.length ?? 0,
      scale: kind === 'PCT' ? ('percent' as const) : ('fraction' as const),
    };
    return [{ role: { kind: 'wavelength', label }, label: field }];
  });
}

/** Cells of a row without those that hold wavelengths. */
export function withoutWavelengths(fields: readonly string[], cells: readonly string[]): string[] {
  return cells.filter((_, i) => !isWavelengthField(fields[i]));
}

/** Index among all cells of a cell in a row without wavelengths. */
export function originalIndex(fields: readonly string[], index: number): number {
  let left = index;
  for (let i = 0; i < fields.length; i++) if (!isWavelengthField(fields[i]) && left-- === 0) return i;
  return index;
}
