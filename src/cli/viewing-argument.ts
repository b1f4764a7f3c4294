import { InvalidArgumentError } from 'commander';
import { ILLUMINANTS, type IlluminantName, type Observer, type Viewing } from '../colorimetry/index.js';

/**
 * Illuminant and observer from the command line: `D65/10`.
 *
 * @throws InvalidArgumentError, which commander prints with the name of the option
 */
export function viewingArgument(text: string): Viewing {
  const [illuminant, observer, ...rest] = text.split('/');
  if (isIlluminant(illuminant) && isObserver(observer) && rest.length === 0) return { illuminant, observer };
  throw new InvalidArgumentError(
    `expected is an illuminant (${Object.keys(ILLUMINANTS).join(', ')}), a stroke and an observer (2 or 10), such as D65/10.`,
  );
}

const isObserver = (name: string): name is Observer => name === '2' || name === '10';

const isIlluminant = (name: string): name is IlluminantName => Object.hasOwn(ILLUMINANTS, name);
