// Writes combination-notes-tonal.tsv: node combination-notes-tonal.js > combination-notes-tonal.tsv
// with npm tonal 6.4.2 (MIT) beside it. Root, what follows it, pitch classes; "none" where tonal knows no such chord.
const { Chord, Note } = require('tonal');
const version = require('tonal/package.json').version;
if (version !== '6.4.2') throw new Error('tonal is ' + version + '; wanted: 6.4.2');

const roots = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'F#', 'G', 'Ab', 'A', 'Bb', 'B'];
const suffixes = [
  '', 'm', 'aug', 'dim', '7', 'maj7', 'm7', 'dim7', '7#5', 'm7b5', 'mMaj7', '6', 'm6', '9', 'maj9', 'm9', '11', 'maj11',
  'm11', '13', 'maj13', 'm13', 'sus2', 'sus4', '5', '7b5', '7b9', '7#9', '7sus4', '9sus4', '69', 'm69', 'add9', 'madd9',
  'maj7#5', 'maj7#11', '7#11', '7b13', '13b9', '7#5b9',
];
const basses = { third: 4, fifth: 7, seventh: 10 };

console.log('# Root, what follows it, pitch classes: Chord.get(root + rest).notes by Note.chroma, npm tonal 6.4.2 (MIT),');
console.log('# written by combination-notes-tonal.js. The bass under a slash is one of the pitch classes.');
for (const root of roots)
  for (const suffix of suffixes) console.log([root, suffix, classes(root + suffix)].join('\t'));
for (const root of roots)
  for (const suffix of ['', 'm', '7', 'm7'])
    for (const semitones of Object.values(basses)) {
      const bass = Note.pitchClass(Note.simplify(Note.fromMidi(Note.midi(root + '3') + semitones)));
      console.log([root, suffix + '/' + bass, classes(root + suffix + '/' + bass)].join('\t'));
    }

function classes(symbol) {
  const notes = Chord.get(symbol).notes;
  if (notes.length === 0) return 'none';
  return [...new Set(notes.map(Note.chroma))].sort((a, b) => a - b).join(' ');
}
