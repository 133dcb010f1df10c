// Plain JavaScript on purpose: an old Node must be able to read this file to say what is wrong.
const [major = 0] = process.versions.node.split('.').map(Number);
if (major < 24) {
  console.error(
    `Scanward needs Node 24; this is ${process.versions.node}. ` +
      'Run "npm install" without --omit=optional: it brings the right Node along for Linux and Windows. ' +
      'Elsewhere install Node 24, then start Scanward with "npm start".',
  );
  process.exit(1);
}
// Compiled code is kept between starts: it halves the time that the first command needs for its libraries.
const { enableCompileCache } = await import('node:module');
enableCompileCache();
const { main } = await import('./main.ts');
process.exitCode = await main(process.argv.slice(2));
