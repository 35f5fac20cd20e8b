/** A box to tick with a pencil. */
export const Box = () => <span class="box" aria-hidden="true" />;
