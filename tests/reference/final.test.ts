import { describe, expect, test } from 'vitest';
import { reckon } from '../../src/engine/rig/reckon.ts';
import { transistors } from '../../src/engine/data/devices.ts';
