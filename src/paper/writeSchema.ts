import { writeFileSync } from 'node:fs';
import { rigFileSchema } from '../engine/rig/file.ts';

writeFileSync('public/rig.schema.json', `${JSON.stringify(rigFileSchema(), null, 2)}\n`);
