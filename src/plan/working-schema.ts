/** How a number of a plan came about, and where it is from. */
import * as z from 'zod/mini';

const text = z.string();

export const Source = z.strictObject({ id: text, title: text, citation: text });

export const Working = z.strictObject({
  formula: text,
  inputs: z.record(
    z.string(),
    z.strictObject({ value: z.number(), unit: text, from: z.enum(['answer', 'assumed', 'catalogue', 'solved']) }),
  ),
  result: z.strictObject({ value: z.number(), unit: text }),
  source: Source,
});
