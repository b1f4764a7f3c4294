import { atLeastOnly, type FittedQuantity } from '../ladder/fitted-quantity.js';
import type { FormChoice, GrindFormFit } from './grind-curve-fit.js';

/** A form that leaves less than this many times the sum of squares of the preferred one is not ruled out. */
const NOT_RULED_OUT = 2;

/** The preferred form of a curve, and the other one where the points don't tell the two apart. */
export interface ChosenForm {
  readonly preferred: GrindFormFit;
  readonly rival?: GrindFormFit;
  readonly chosenBy: FormChoice;
}

/** The form that the points prefer: by AICc, or by its fewer parameters where there are too few points for that. */
export function chooseForm(forms: readonly GrindFormFit[], asked: boolean): ChosenForm | undefined {
  const [best, other] = [...forms].sort((a, b) => (a.aicc ?? 0) - (b.aicc ?? 0));
  if (!best) return undefined;
  if (!other) return { preferred: best, chosenBy: asked ? 'caller' : 'only-form' };
  const compared = best.aicc !== undefined && other.aicc !== undefined;
  const [preferred, rival] = compared || best.form === 'half-time' ? [best, other] : [other, best];
  const undecided = squares(rival) < NOT_RULED_OUT * squares(preferred);
  return { preferred, ...(undecided && { rival }), chosenBy: compared ? 'aicc' : 'fewer-parameters' };
}

/** What hangs on the end of the curve, at least as much as both forms say where they are undecided. */
export function endFigures({ preferred, rival }: ChosenForm) {
  const figure = (of: (form: GrindFormFit) => FittedQuantity) => {
    const own = atLeastOnly(of(preferred));
    const other = rival && atLeastOnly(of(rival)).atLeast;
    if (own.atLeast === undefined || !rival) return own;
    const { atLeast, ...rest } = own;
    return other === undefined ? rest : { ...rest, atLeast: Math.min(atLeast, other) };
  };
  return {
    finalStrength: figure(({ finalStrength }) => finalStrength),
    halfTime: figure(({ halfTime }) => halfTime),
    timeTo90: figure(({ timeTo90 }) => timeTo90),
    timeTo95: figure(({ timeTo95 }) => timeTo95),
  };
}

function squares({ residualDeviation, degreesOfFreedom }: GrindFormFit): number {
  return residualDeviation ** 2 * degreesOfFreedom;
}
