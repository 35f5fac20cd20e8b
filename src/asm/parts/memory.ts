/** A module's memory as a stack: reserve, and give back to a mark. Views on the memory must be made after the last `reserve`. */
let top: usize = 0;

/** Where the next reserved memory begins. */
export function mark(): usize {
  return top;
}

/** Gives back what was reserved after a mark; all of it for 0. */
export function release(at: usize): void {
  top = at == 0 ? (__heap_base + 15) & ~15 : at;
}

/** Room for so many bytes. */
export function reserve(bytes: usize): usize {
  const at = top;
  top = (at + bytes + 31) & ~15;
  const pages = <i32>((top + 0xffff) >> 16) - memory.size();
  if (pages > 0) memory.grow(pages);
  return at;
}

