// Writes abcjs-played.tsv: for every .abc file of two folders in sorted order the folder, its number, the SHA-256 of the
// file, how many moments are struck, and the first 16 digits of the SHA-256 of the pitches as played out (what is struck
// together joined by a plus sign in ascending order, moments by a space). Made with abcjs 6.7.2:
//   npm install abcjs@6.7.2
//   node abcjs-played.js CORPUS > abcjs-played.tsv
// The field Y: is this collection's own and no field of ABC; abcjs would take it for notes, so it is taken out.
const fs = require('fs'), path = require('path'), crypto = require('crypto');
const abcjs = require('abcjs');
const sha = (data) => crypto.createHash('sha256').update(data).digest('hex');
for (const folder of ['abc-flyingcat', 'abc-nottingham']) {
  const inside = path.join(process.argv[2], folder);
  fs.readdirSync(inside).filter((name) => name.endsWith('.abc')).sort().forEach((name, index) => {
    const bytes = fs.readFileSync(path.join(inside, name));
    const [tune] = abcjs.parseOnly(bytes.toString('utf8').replace(/^Y:.*\n/gm, ''));
    const tracks = tune.setUpAudio({ chordsOff: true }).tracks;
    const melody = tracks.find((track) => track.some((event) => event.cmd === 'note')) || [];
    const byTime = new Map();
    for (const event of melody) {
      if (event.cmd !== 'note') continue;
      const start = Math.round(event.start * 1e5);
      if (!byTime.has(start)) byTime.set(start, new Set());
      byTime.get(start).add(event.pitch);
    }
    const struck = [...byTime.entries()].sort((a, b) => a[0] - b[0])
      .map(([, pitches]) => [...pitches].sort((a, b) => a - b).join('+'));
    console.log([folder, index, sha(bytes), struck.length, sha(struck.join(' ')).slice(0, 16)].join('\t'));
  });
}
