import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

// What a public function is passed may hold undefined for what is absent (`?: T | undefined`): an option worked out as `known ? x : undefined`
// compiles under exact optional properties. What comes out never holds it (`?: T`, checked by the compiler), so types that are also results are not asked.

const OPTIONS: ts.CompilerOptions = {
  strict: true,
  exactOptionalPropertyTypes: true,
  skipLibCheck: true,
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  types: ['node'],
};
const SOURCE = join(process.cwd(), 'src');

const doors = readdirSync(SOURCE, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && readdirSync(join(SOURCE, entry.name)).includes('index.ts'))
  .map(({ name }) => join(SOURCE, name, 'index.ts'));
const program = ts.createProgram(doors, OPTIONS);
const checker = program.getTypeChecker();

/** What a type is made of besides its properties: the parts of a union, the elements of an array, the bound of a type parameter. */
function partsOf(type: ts.Type): readonly ts.Type[] {
  if (type.isUnion()) return type.types;
  if (type.flags & ts.TypeFlags.TypeParameter) return [checker.getBaseConstraintOfType(type) ?? []].flat();
  if (!(type.flags & ts.TypeFlags.Object)) return [];
  const { objectFlags } = type as ts.ObjectType;
  return objectFlags & ts.ObjectFlags.Reference ? checker.getTypeArguments(type as ts.TypeReference) : [];
}

/** The optional properties of our own types within a type, by the place of their declaration. */
function optionalWithin(types: readonly ts.Type[]): Map<string, ts.PropertySignature> {
  const found = new Map<string, ts.PropertySignature>();
  const seen = new Set<ts.Type>();
  const visit = (type: ts.Type): void => {
    if (seen.has(type)) return;
    seen.add(type);
    for (const part of [...partsOf(type), ...(type.aliasTypeArguments ?? [])]) visit(part);
    for (const property of checker.getPropertiesOfType(type)) {
      const declared = property.declarations?.find(ts.isPropertySignature);
      if (!declared?.getSourceFile().fileName.startsWith(SOURCE)) continue;
      if (declared.questionToken) {
        const { fileName } = declared.getSourceFile();
        found.set(`${relative(SOURCE, fileName)}: ${declared.parent.getStart()}.${declared.name.getText()}`, declared);
      }
      visit(checker.getTypeOfSymbol(property));
    }
  };
  for (const type of types) visit(type);
  return found;
}

const signatures = doors.flatMap((door) => {
  const file = program.getSourceFile(door);
  const module = file && checker.getSymbolAtLocation(file);
  return (module ? checker.getExportsOfModule(module) : []).flatMap((symbol) => {
    const value = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
    return value.flags & ts.SymbolFlags.Value ? checker.getTypeOfSymbol(value).getCallSignatures() : [];
  });
});
const passed = optionalWithin(
  signatures.flatMap(({ parameters }) => parameters.map((parameter) => checker.getTypeOfSymbol(parameter))),
);
const returned = optionalWithin(signatures.map((signature) => signature.getReturnType()));

test('the walk finds what is passed and what is returned', () => {
  expect(signatures.length).toBeGreaterThan(80);
  expect(passed.size).toBeGreaterThan(100);
  expect(returned.size).toBeGreaterThan(100);
});

test('whatever may be left out of what is passed may also be undefined', () => {
  const refused = [...passed]
    .filter(([place, { type }]) => !returned.has(place) && type && !/\bundefined$/.test(type.getText()))
    .map(([place, declared]) => `${place} ${declared.getText()}`);
  expect(refused).toEqual([]);
});
