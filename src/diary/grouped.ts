/** Rows by key, in the order in which keys first come (Map.groupBy, which Node 20 does not have). */
export function grouped<K, V>(rows: V[], keyOf: (row: V) => K): Map<K, V[]> {
  const groups = new Map<K, V[]>();
  for (const row of rows) {
    const group = groups.get(keyOf(row));
    if (group) group.push(row);
    else groups.set(keyOf(row), [row]);
  }
  return groups;
}
