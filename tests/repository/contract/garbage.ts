import type { GarbageKind, SoundCall } from './sound-calls.js';

/** A call that must be refused, with words for the report. */
export interface GarbageCall {
  readonly what: string;
  readonly args: readonly unknown[];
}

const GARBAGE: readonly (readonly [GarbageKind, unknown])[] = [
  ['nothing', undefined],
  ['null', null],
  ['text', '57'],
  ['number', 57],
  ['NaN', Number.NaN],
  ['NaN', Number.POSITIVE_INFINITY],
  ['list', []],
  ['list', [Number.NaN]],
  ['list', ['57']],
  ['list', [null]],
  ['list', [57, 57, 57]],
  ['flag', true],
  ['flag', false],
  ['object', {}],
  [
    'object',
    { L: Number.NaN, a: Number.NaN, b: Number.NaN, X: Number.NaN, Y: Number.NaN, Z: Number.NaN, values: [Number.NaN] },
  ],
];

/** What a number within an argument is replaced by. */
const NO_NUMBERS: readonly unknown[] = [Number.NaN, Number.POSITIVE_INFINITY, '1', null, true, {}, [1]];

/** Every call that differs from the sound one in one place by garbage. */
export function garbageCalls(call: SoundCall): readonly GarbageCall[] {
  return call.args.flatMap((arg, place) => [
    ...replacedArguments(call, arg, place),
    ...(call.results?.includes(place) ? [] : replacedNumbers(call, arg, place)),
    ...(call.options?.includes(place) ? [withUnknownOption(call, arg, place)] : []),
  ]);
}

function replacedArguments(call: SoundCall, arg: unknown, place: number): readonly GarbageCall[] {
  const sound = new Set<GarbageKind>([kindOf(arg), ...(call.sound?.[place] ?? [])]);
  if (call.optional?.includes(place)) sound.add('nothing');
  // An object, a list or a number is sound only as it is: garbage of the same kind must still be refused.
  for (const kind of ['object', 'list', 'NaN'] as const) if (!call.sound?.[place]?.includes(kind)) sound.delete(kind);
  // Options may all be left out.
  const empty = call.options?.includes(place) && call.optional?.includes(place) ? '{}' : '';
  return GARBAGE.filter(([kind, garbage]) => !sound.has(kind) && show(garbage) !== empty).map(([kind, garbage]) => ({
    what: `argument ${place}: ${kind} ${show(garbage)}`,
    args: withPlace(call.args, place, garbage),
  }));
}

function withPlace(args: readonly unknown[], place: number, value: unknown): readonly unknown[] {
  return args.map((own, i) => (i === place ? value : own));
}

function kindOf(arg: unknown): GarbageKind {
  if (typeof arg === 'number') return 'number';
  if (typeof arg === 'string') return 'text';
  if (typeof arg === 'boolean') return 'flag';
  return Array.isArray(arg) ? 'list' : 'object';
}

function replacedNumbers(call: SoundCall, arg: unknown, place: number): readonly GarbageCall[] {
  return numbersIn(arg, []).flatMap((path) => {
    if (path.length === 0 || call.free?.includes(String(path.at(-1)))) return [];
    const infinite = call.infinite?.includes(String(path.at(-1)));
    return NO_NUMBERS.flatMap((garbage) => {
      if (infinite && garbage === Number.POSITIVE_INFINITY) return [];
      const changed = withValue(arg, path, garbage);
      // A typed array turns some garbage into a number again; only what it can't hold is left.
      if (changed === undefined) return [];
      return [
        { what: `argument ${place}.${path.join('.')}: ${show(garbage)}`, args: withPlace(call.args, place, changed) },
      ];
    });
  });
}

function withUnknownOption(call: SoundCall, arg: unknown, place: number): GarbageCall {
  return {
    what: `argument ${place} with an option that is unknown`,
    args: withPlace(call.args, place, { ...(arg as object), misspelt: 1 }),
  };
}

/** The paths of all numbers in plain data; of a list only its ends and middle. */
function numbersIn(value: unknown, path: readonly (string | number)[]): readonly (readonly (string | number)[])[] {
  if (typeof value === 'number') return [path];
  if (Array.isArray(value) || value instanceof Float64Array) {
    const places = new Set([0, Math.floor((value.length - 1) / 2), value.length - 1].filter((i) => i >= 0));
    return [...places].flatMap((i) => numbersIn(value[i], [...path, i]));
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => numbersIn(part, [...path, key]));
}

function withValue(value: unknown, [key, ...rest]: readonly (string | number)[], garbage: unknown): unknown {
  if (key === undefined) return garbage;
  if (value instanceof Float64Array) {
    if (typeof garbage !== 'number') return undefined;
    return value.map((own, i) => (i === key ? garbage : own));
  }
  if (Array.isArray(value)) return value.map((own, i) => (i === key ? withValue(own, rest, garbage) : own));
  const part = withValue((value as Record<string, unknown>)[key], rest, garbage);
  return part === undefined ? undefined : { ...(value as object), [key]: part };
}

function show(value: unknown): string {
  return (
    JSON.stringify(value, (_, part) => (typeof part === 'number' && !Number.isFinite(part) ? String(part) : part)) ??
    'undefined'
  );
}
