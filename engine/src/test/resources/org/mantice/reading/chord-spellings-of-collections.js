// Writes chord-spellings-of-collections.tsv: for every distinct text in quotation marks of the .abc files and every
// distinct printed kind of the MusicXML files of a corpus, sorted: as written, as given to the library, the library, the
// pitch classes of the chord in ascending order, that of a slash bass or "-". "none" where no library knows a chord.
// Made with tonal 6.4.2 (MIT) and, where it is silent, teoria 2.5.0 (MIT):
//   npm install tonal@6.4.2 teoria@2.5.0
//   node chord-spellings-of-collections.js CORPUS > chord-spellings-of-collections.tsv
// What both are silent about is this dialect of folk tunes, and is spelled out for them: brackets and spaces around a
// chord or between root and kind, d for dim and a for aug, a slash bass in a small letter with plus for sharp.
const fs = require('fs'), path = require('path'), zlib = require('zlib');
const { Chord, Note } = require('tonal'), teoria = require('teoria');
const files = (folder) => fs.readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
  entry.isDirectory() ? files(path.join(folder, entry.name)) : [path.join(folder, entry.name)]);
// The members of a ZIP archive by its central directory, so that malformed containers are looked into as well.
function members(bytes) {
  const all = [];
  for (let at = bytes.indexOf('PK\x01\x02', 0, 'latin1'); at >= 0; at = bytes.indexOf('PK\x01\x02', at + 4, 'latin1')) {
    const local = bytes.readUInt32LE(at + 42), size = bytes.readUInt32LE(at + 20);
    const from = local + 30 + bytes.readUInt16LE(local + 26) + bytes.readUInt16LE(local + 28);
    const data = bytes.subarray(from, from + size);
    all.push(bytes.readUInt16LE(at + 10) === 8 ? zlib.inflateRawSync(data) : data);
  }
  return all;
}
const written = new Set();
for (const folder of ['abc-flyingcat', 'abc-nottingham'])
  for (const file of files(path.join(process.argv[2], folder)).filter((name) => name.endsWith('.abc')))
    for (const line of fs.readFileSync(file, 'utf8').split(/\r?\n/)) {
      if (/^[A-Za-z+]:/.test(line) && !/^[A-Ga-gxyz]:[|:]/.test(line)) continue;
      for (const [, text] of line.replace(/%.*/, '').matchAll(/"([^"]*)"/g)) written.add(text);
    }
for (const folder of ['musicxml-misc', 'musicxml-test-suite', 'mxl-leadsheets-pd'])
  for (const file of files(path.join(process.argv[2], folder)).filter((name) => /\.(xml|musicxml|mxl)$/.test(name))) {
    const bytes = fs.readFileSync(file);
    for (const text of file.endsWith('.mxl') ? members(bytes) : [bytes])
      for (const [, kind] of text.toString('utf8').matchAll(/<kind[^>]* text="([^"]*)"/g)) written.add('C' + kind);
  }
function spelled(text) {
  let plain = text.trim().replace(/^\((.*)\)$/, '$1').replace(/^([A-G][b#]?) +/, '$1');
  plain = plain.replace(/\/([a-g])([b+]?)$/, (all, letter, sign) => '/' + letter.toUpperCase() + sign.replace('+', '#'));
  return plain.replace(/^([A-G][b#]?)d(?=$|\/)/, '$1dim').replace(/^([A-G][b#]?)a(?=7?($|\/))/, '$1aug');
}
const classes = (numbers) => [...new Set(numbers)].sort((a, b) => a - b).join(' ');
for (const text of [...written].sort()) {
  const plain = spelled(text), [chord, bass] = plain.split('/');
  const notes = Chord.get(chord).notes.map(Note.chroma);
  let row = notes.length ? ['tonal', classes(notes)] : null;
  if (!row && /^[A-G]/.test(chord)) try {
    row = ['teoria', classes(teoria.chord(chord).notes().map((note) => note.chroma()))];
  } catch (silent) { row = null; }
  const known = row && (bass === undefined || /^[A-G][b#]?$/.test(bass));
  console.log((known ? [text, plain, ...row, bass ? Note.chroma(bass) : '-'] : [text, 'none']).join('\t'));
}
