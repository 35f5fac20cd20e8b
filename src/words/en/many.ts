/** "1 plan", "3 plans". */
export const many = (count: unknown, one: string, more: string): string =>
  Number(count) === 1 ? `1 ${one}` : `${count} ${more}`;
