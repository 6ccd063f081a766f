/** What stands in the folder of a shop for whoever opens it next. */
export const shopReadme = `# Our test reports

Made with Straightface. Needed: Node 20 or newer.

1. Once: \`npm install\`, and keep \`package-lock.json\` with the other files. Elsewhere: \`npm ci\`.
2. \`npm start\` opens the desk in a browser: say who you are, drop a session file, answer what is asked, publish.
3. Or by files: \`content/README.md\` tells what stands in them, \`npm run help\` lists all commands.
4. \`npm run check\` shows what is wrong and what to do, \`npm run build\` writes the site into \`dist/\`: plain files for any host.
5. Upgrade: \`npm install\` with the newer package (where this one came from stands in \`package.json\`), then \`npm run migrate\`
   and \`npm run check\`.
`;

/** What is made anew by installing and building, and is not kept. */
export const shopIgnores = `node_modules/
dist/
dist.old/
.dist.straightface-*
.cache/
*.log
.straightface-*
`;
