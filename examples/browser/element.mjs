// HTML and SVG elements; text is always set as text, so that a name from a file can't become markup.

const SVG = 'http://www.w3.org/2000/svg';

export const element = (name, attributes = {}, ...children) => fill(document.createElement(name), attributes, children);
export const drawing = (name, attributes = {}, ...children) =>
  fill(document.createElementNS(SVG, name), attributes, children);

function fill(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false) node.setAttribute(name, value === true ? '' : String(value));
  }
  node.append(...children.flat(Infinity).filter((child) => child !== undefined && child !== false));
  return node;
}
