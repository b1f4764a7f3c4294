import { assertArray, assertFinite, assertObject, assertString } from '../../core/internal.js';
import type { MeasurementFile } from '../../exchange/index.js';

/**
 * Refuses what is no measurement file. It has no kind by which it is known and may come back from JSON, so what is printed of its tables and
 * warnings is looked into; a measurement is checked where it is shown.
 *
 * @throws TintladderError `wrong-type`, `not-finite`
 */
export function assertMeasurementFile(file: MeasurementFile, path = 'file'): void {
  assertObject(file, path, 'what readMeasurements gives');
  const { format, tables, measurements, warnings } = file;
  assertString(format, `${path}.format`);
  assertArray(measurements, `${path}.measurements`);
  assertArray(tables, `${path}.tables`);
  tables.forEach((table, i) => {
    const at = `${path}.tables[${i}]`;
    assertObject(table, at);
    assertFinite({ line: table.line, count: table.count }, at);
    if (table.grid === undefined) return;
    assertObject(table.grid, `${at}.grid`);
    const { start, step, count } = table.grid;
    assertFinite({ start, step, count }, `${at}.grid`);
  });
  assertArray(warnings, `${path}.warnings`);
  warnings.forEach((warning, i) => {
    assertObject(warning, `${path}.warnings[${i}]`);
    assertString(warning.message, `${path}.warnings[${i}].message`);
  });
}
