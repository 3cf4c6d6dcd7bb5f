import { defineCollection } from 'astro:content';
import { docsLoader } from '@astrojs/starlight/loaders';
import { docsSchema } from '@astrojs/starlight/schema';
import { z } from 'astro/zod';

/** Pages of the documentation: what every page has, whom it serves, and the state of a decision. */
export const collections = {
  docs: defineCollection({
    loader: docsLoader(),
    schema: docsSchema({
      extend: z.object({
        serves: z.array(z.enum(['cook', 'teacher', 'parent', 'developer'])).optional(),
        status: z.enum(['proposed', 'accepted', 'superseded']).optional(),
        date: z.coerce.date().optional(),
      }),
    }),
  }),
};
