/** What the phone's home screen and app list show. */
export const manifestWords = {
  name: 'Halyard',
  description: 'Plans wire antennas for the short waves and what feeds them. Works with no signal.',
  newPlan: 'New plan',
  onHand: 'Parts on hand',
} as const;
