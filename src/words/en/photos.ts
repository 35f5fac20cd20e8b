/** What is said around pictures of how an antenna hung. */
import type { Message } from '../message';
import { many } from './many';

export const photoWords = {
  head: 'How it hung',
  why: 'A photo shows next time what words forget: which fork, which way the coax went.',
  add: 'Add a photo',
  stays:
    'Photos stay on this phone. No link, code or export file carries them. They are made smaller, and the place that the camera wrote into them is left out.',
  shrinking: 'Making it smaller',
  unreadable: 'This browser cannot read that file as a picture. Take another one, or save it as JPEG first.',
  notKept: 'The photo was not kept. Look at what is said about saving, then choose it once more.',
  notShown: ({ count }) => `${many(count, 'photo', 'photos')} cannot be read by this version. Kept as they are.`,
  alt: ({ when }) => `How it hung: photo kept ${when}`,
  kept: ({ when }) => `Kept ${when}`,
  remove: 'Take away',
  removeOne: ({ when }) => `Take away the photo kept ${when}`,
  removed: ({ when }) => `Taken away. Kept ${when}; still on this phone.`,
  removedAlt: ({ when }) => `Taken away: photo kept ${when}`,
  putBack: 'Put back',
  putBackOne: ({ when }) => `Put back the photo kept ${when}`,
  deleteForGood: 'Delete for good',
  deleteOne: ({ when }) => `Delete for good the photo kept ${when}`,
  sure: 'Delete it for good? Nothing brings it back.',
  keepIt: 'Keep it',
} as const satisfies Readonly<Record<string, Message>>;
