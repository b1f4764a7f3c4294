// HTML elements; text is always set as text, so that a name from a file can't become markup.

export function element(name, attributes = {}, ...children) {
  const node = document.createElement(name);
  for (const [attribute, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false) node.setAttribute(attribute, value === true ? '' : String(value));
  }
  node.append(...children.flat(Infinity).filter((child) => child !== undefined && child !== false));
  return node;
}
