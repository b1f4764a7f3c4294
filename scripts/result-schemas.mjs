// Writes docs/schemas/*.schema.json: a JSON Schema (draft 2020-12) of each result, made from its TypeScript type, so that the two can't part.
// `npm run schemas` writes them; `node scripts/result-schemas.mjs --check` compares and exits with 1 where one is out of date.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** Results by the `kind` that their JSON carries, with the room whose door exports the type. */
const RESULTS = {
  'colour-difference': ['colorimetry', 'ColourDifference'],
  'metamerism-index': ['colorimetry', 'MetamerismIndex'],
  'drawdown-film': ['strength', 'DrawdownFilm'],
  'surface-fit': ['strength', 'SurfaceFit'],
  strength: ['strength', 'StrengthResult'],
  'strength-from-lab': ['strength', 'StrengthFromLabResult'],
  'criteria-comparison': ['strength', 'CriteriaComparison'],
  'grind-curve': ['fits', 'GrindCurveFit'],
  'dosage-ladder': ['fits', 'DosageLadderFit'],
  'rub-out': ['rubout', 'RubOutResult'],
  'side-comparisons': ['evidence', 'SideComparisons'],
  'next-measurement': ['evidence', 'NextMeasurement'],
  'control-chart': ['evidence', 'ControlChartResult'],
  'control-precision': ['evidence', 'ControlPrecision'],
  study: ['study', 'StudyResult'],
  'batch-adjustment': ['production', 'BatchAdjustment'],
};

const FOLDER = 'docs/schemas';

const { config } = ts.readConfigFile('tsconfig.json', ts.sys.readFile);
const { options, fileNames } = ts.parseJsonConfigFileContent({ ...config, include: ['src'] }, ts.sys, '.');
const program = ts.createProgram(fileNames, options);
const checker = program.getTypeChecker();

function typeOf(room, name) {
  const file = program.getSourceFile(`src/${room}/index.ts`);
  const exported = checker.getExportsOfModule(checker.getSymbolAtLocation(file)).find((one) => one.name === name);
  if (!exported) throw new Error(`src/${room}/index.ts exports no type ${name}`);
  const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
  return checker.getDeclaredTypeOfSymbol(symbol);
}

/** A schema of one type; named object types are gathered in `$defs`, so that what holds itself ends. */
function schemaOf(root) {
  const definitions = new Map();
  const names = new Map();

  const describe = (symbol) => {
    const text = ts.displayPartsToString(symbol.getDocumentationComment(checker)).replace(/\s+/g, ' ').trim();
    return text ? { description: text } : {};
  };

  function convert(type) {
    if (type.flags & ts.TypeFlags.TypeParameter)
      return convert(checker.getBaseConstraintOfType(type) ?? checker.getAnyType());
    if (type.flags & ts.TypeFlags.StringLiteral) return { const: type.value };
    if (type.flags & ts.TypeFlags.NumberLiteral) return { const: type.value };
    if (type.flags & ts.TypeFlags.BooleanLiteral) return { const: checker.typeToString(type) === 'true' };
    if (type.flags & ts.TypeFlags.StringLike) return { type: 'string' };
    // JSON has no Infinity: an open end comes as null
    if (type.flags & ts.TypeFlags.NumberLike) return { type: ['number', 'null'] };
    if (type.flags & ts.TypeFlags.BooleanLike) return { type: 'boolean' };
    if (type.flags & ts.TypeFlags.Null) return { type: 'null' };
    if (type.flags & (ts.TypeFlags.Unknown | ts.TypeFlags.Any)) return {};
    if (type.isUnion()) return union(type.types);
    if (checker.isTupleType(type)) {
      return { type: 'array', prefixItems: checker.getTypeArguments(type).map(convert), items: false };
    }
    if (checker.isArrayType(type)) return { type: 'array', items: convert(checker.getTypeArguments(type)[0]) };
    if (/Array$/.test(type.symbol?.name ?? '') && type.getNumberIndexType())
      return { type: 'array', items: { type: 'number' } };
    return object(type);
  }

  function union(types) {
    const kept = types.filter((one) => !(one.flags & ts.TypeFlags.Undefined));
    if (kept.length === 2 && kept.every((one) => one.flags & ts.TypeFlags.BooleanLiteral)) return { type: 'boolean' };
    if (kept.length === 1) return convert(kept[0]);
    if (kept.every((one) => one.isStringLiteral() || one.isNumberLiteral()))
      return { enum: kept.map(({ value }) => value) };
    return { anyOf: kept.map(convert) };
  }

  function object(type) {
    const named =
      type.aliasSymbol?.name ?? (type.symbol?.flags & ts.SymbolFlags.Interface ? type.symbol.name : undefined);
    if (named === undefined || type === root) return properties(type);
    const name = names.get(type) ?? uniqueName(type, named);
    if (!definitions.has(name)) {
      definitions.set(name, {});
      definitions.set(name, { ...describe(type.aliasSymbol ?? type.symbol), ...properties(type) });
    }
    return { $ref: `#/$defs/${name}` };
  }

  function uniqueName(type, named) {
    const taken = new Set(names.values());
    let name = named;
    for (let i = 2; taken.has(name); i++) name = `${named}${i}`;
    names.set(type, name);
    return name;
  }

  function properties(type) {
    const fields = {};
    const required = [];
    for (const property of checker.getPropertiesOfType(type)) {
      // a brand is a symbol, which JSON does not have
      if (property.name.startsWith('__@')) continue;
      const own = checker.getTypeOfSymbol(property);
      if (own.getCallSignatures().length > 0) continue;
      fields[property.name] = { ...describe(property), ...convert(own) };
      if (!(property.flags & ts.SymbolFlags.Optional)) required.push(property.name);
    }
    const index = type.getStringIndexType();
    return {
      type: 'object',
      ...(Object.keys(fields).length > 0 && { properties: fields }),
      ...(required.length > 0 && { required }),
      additionalProperties: index ? convert(index) : false,
    };
  }

  const schema = convert(root);
  return { ...schema, ...(definitions.size > 0 && { $defs: Object.fromEntries([...definitions].sort()) }) };
}

let outdated = 0;
mkdirSync(FOLDER, { recursive: true });
for (const [kind, [room, name]] of Object.entries(RESULTS)) {
  const schema = {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: `${name}: a result of tintladder/${room} as JSON`,
    ...schemaOf(typeOf(room, name)),
  };
  const text = `${JSON.stringify(schema, null, 1)}\n`;
  const path = join(FOLDER, `${kind}.schema.json`);
  const same = existsSync(path) && readFileSync(path, 'utf8') === text;
  if (process.argv.includes('--check')) {
    if (!same) console.error(`${path} is out of date: npm run schemas`);
    if (!same) outdated++;
  } else if (!same) {
    writeFileSync(path, text);
    console.log(`written: ${path}`);
  }
}
if (outdated > 0) process.exitCode = 1;
