// node abcjs-reading.js PASSES FILE-WITH-NAMES: milliseconds that each pass over all files takes to be parsed, no
// drawing; the module abcjs is found as node finds modules.
const fs = require("fs");
const abcjs = require("abcjs");

const passes = Number(process.argv[2]);
const names = fs.readFileSync(process.argv[3], "utf8").split("\n").filter(name => name.length > 0);
const texts = names.map(name => fs.readFileSync(name, "latin1"));
for (let pass = 0; pass < passes; pass++) {
  const start = process.hrtime.bigint();
  let measures = 0;
  for (const text of texts) for (const tune of abcjs.parseOnly(text)) measures += tune.lines.length;
  if (measures === 0) throw new Error("nothing was read");
  console.log(Number(process.hrtime.bigint() - start) / 1e6);
}
