// Which readings a name or pattern means, and which names belong together as replicates.

/** What the readings of a file can stand for. */
export const ROLE_WORDS = {
  reference: 'Reference, unrubbed',
  referenceRubbed: 'Reference, rubbed',
  trial: 'Trial, unrubbed',
  trialRubbed: 'Trial, rubbed',
  white: 'White base',
};

/** Whether a name matches a pattern in which `*` stands for anything; case and space at the ends don't count. */
export function matches(name, pattern) {
  const literal = (text) => text.replace(/[.+?^${}()|[\]\\]/g, '\\$&');
  const expression = new RegExp(`^${pattern.trim().split('*').map(literal).join('.*')}$`, 'i');
  return pattern.trim() !== '' && expression.test(name.trim());
}

/**
 * A pattern for every name and its numbered replicates, in the order of the file: `WB white 1`, `WB white 2` give `WB white *`,
 * `WB A 1-1`, `WB A 1-2` give `WB A *`.
 */
export function groupsOf(names) {
  const stem = (name) => name.replace(/[\s._-]*\d+(?:-\d+)*$/, '');
  const counts = new Map();
  for (const name of names) counts.set(stem(name), (counts.get(stem(name)) ?? 0) + 1);
  return [...new Set(names.map((name) => (counts.get(stem(name)) > 1 ? `${stem(name)} *` : name)))];
}

/** The first group whose name holds every one of the words, or nothing. */
export function groupWith(groups, ...words) {
  return groups.find((group) => words.every((word) => group.toLowerCase().includes(word))) ?? '';
}
