/** JSON as a person would lay it out: what fits on one line stays on one. */

const WIDTH = 100;

export function readableJson(value, indent = '', lead = 0) {
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  const flat = onOneLine(value);
  if (indent !== '' && indent.length + lead + flat.length < WIDTH) return flat;
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    const items = value.map((item) => inner + readableJson(item, inner));
    return `[\n${items.join(',\n')}\n${indent}]`;
  }
  const members = Object.entries(value).map(([key, member]) => {
    const name = `${JSON.stringify(key)}: `;
    return inner + name + readableJson(member, inner, name.length);
  });
  return `{\n${members.join(',\n')}\n${indent}}`;
}

function onOneLine(value) {
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(onOneLine).join(', ')}]`;
  const members = Object.entries(value).map(
    ([key, member]) => `${JSON.stringify(key)}: ${onOneLine(member)}`,
  );
  return members.length ? `{ ${members.join(', ')} }` : '{}';
}
