import * as z from 'zod'

// zod compiles each schema for the many parses of a long-lived program; a run that reads one file is over before that pays
z.config({ jitless: true })
