/// <reference types="astro/client" />
import type { DataTools } from '../kit/dataFiles.ts';
import reproduceR from '../kit/reproduce/reproduce.R?raw';
import reproducePython from '../kit/reproduce/reproduce.py?raw';
import { version } from './version.ts';

/** What the data of every report are published with. */
export const dataTools: DataTools = { version, reproduceR, reproducePython };
