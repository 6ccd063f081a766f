import { defineConfig } from 'astro/config';
import { contentGate } from './src/commands/contentGate.ts';
import { siteConfig } from './src/commands/siteConfig.ts';

export default defineConfig(siteConfig(contentGate()));
