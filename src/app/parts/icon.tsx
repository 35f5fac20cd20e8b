/** The app's own pictures on buttons, 24 by 24, one stroke. */
const paths = {
  back: 'M15 4 7 12l8 8',
  next: 'M9 4l8 8-8 8',
  tick: 'M4 13l5.5 5.5L20 6',
  plus: 'M12 4v16M4 12h16',
  undo: 'M8 4 3 9l5 5M3 9h11a6 6 0 0 1 0 12H8',
  erase: 'M8 5h13v14H8l-6-7zM12 9l6 6M18 9l-6 6',
  plans: 'M3 19 12 6l9 13M12 6v14',
  onHand: 'M3 9h18l-2 11H5zM8 9V5h8v4',
  why: 'M2 7h20M2 12h20M2 17h20M13 4l3 3-3 3M11 14l-3 3 3 3',
  settings: 'M4 7h2M12 7h8M4 17h8M18 17h2M6 7a3 3 0 1 0 6 0a3 3 0 1 0 -6 0M12 17a3 3 0 1 0 6 0a3 3 0 1 0 -6 0',
  shop: 'M4 6h3M4 12h3M4 18h3M11 6h9M11 12h9M11 18h9',
  cut: 'M2 14h20M2 9v10M22 9v10M14 4l-3 7h6z',
  raise: 'M12 22V4M5 11l7-8 7 8M4 22h16',
  trim: 'M2 8h20v8H2zM7 8v4M12 8v5M17 8v4',
  warn: 'M12 4v10M12 18v2',
} as const;
export type IconName = keyof typeof paths;

/** These point along the line of reading and are mirrored where that runs from right to left. */
const pointing: readonly IconName[] = ['back', 'next', 'undo', 'shop'];

export const Icon = ({ name }: { name: IconName }) => (
  <svg
    class={pointing.includes(name) ? 'pointing' : undefined}
    viewBox="0 0 24 24"
    aria-hidden="true"
    fill="none"
    stroke="currentColor"
    stroke-width="2.5"
    stroke-linecap="round"
    stroke-linejoin="round"
  >
    <path d={paths[name]} />
  </svg>
);

/** Red pencil: this is the place, here, now. Always beside a word. */
export const Pin = () => (
  <svg class="pin" viewBox="0 0 16 16" aria-hidden="true">
    <path d="M8 16 1 3h14z" fill="currentColor" />
  </svg>
);
