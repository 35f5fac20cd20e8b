/** A saved plan with nothing done with it yet, of the first version, as an app of that time kept it; id, answers and times come on top. */
export const emptyRecord = {
  version: 1,
  createdAt: 1,
  updatedAt: 1,
  answeredAt: {},
  unsure: {},
  typed: {},
  cautionsRead: {},
  ticks: {},
  progress: {},
  measurements: [],
};
