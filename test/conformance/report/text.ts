/** Pieces of Markdown. */

export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
  return [line(head), line(head.map(() => "---")), ...rows.map(line)].join("\n");
}

export function list(items: readonly string[]): string {
  return items.length === 0 ? "None." : items.map((item) => `- ${item}`).join("\n");
}

export function count(things: readonly unknown[], noun: string): string {
  return `${things.length} ${noun}${things.length === 1 ? "" : "s"}`;
}
