import type { Level } from './level.js';

/** Days or sessions in which the units of a nest were made, one label a unit, in the order of the units. */
export interface BlockLabels {
  readonly day?: readonly string[] | undefined;
  readonly session?: readonly string[] | undefined;
}

type Nest<Name extends Level, Unit> = { readonly [name in Name]: readonly Unit[] } & BlockLabels;

/** One reading, or spots of one film. */
export type RepeatedSpots<Reading> = Reading | Nest<'spot', Reading>;

/** The same, or drawdowns of one weigh-up. */
export type RepeatedDrawdowns<Reading> = RepeatedSpots<Reading> | Nest<'drawdown', RepeatedSpots<Reading>>;

/** The same, or weigh-ups of one grind. */
export type RepeatedWeighings<Reading> = RepeatedDrawdowns<Reading> | Nest<'weighing', RepeatedDrawdowns<Reading>>;

/**
 * One reading, or readings under the name of what was repeated, outermost level first.
 *
 * `reading`, `{ weighing: [a, b, c] }`, `{ weighing: [{ spot: [a, b] }, { spot: [c] }] }`: as unbalanced as it comes. A bare list is refused
 * everywhere, since three spots of one film and three weigh-ups say different things. A reading is anything but a list or an object with a key
 * that is one of {@link LEVELS}; colours, spectra and numbers have none. Days and sessions stand beside the units as labels:
 * `{ weighing: [a, b], day: ['1', '2'] }`.
 */
export type Repeated<Reading> = RepeatedWeighings<Reading> | Nest<'grind', RepeatedWeighings<Reading>>;
