// Holds the log of a build that failed by design against its expected.txt: these very lines, one after
// the other, must be among its errors. Shows them, and where the rest is.

// The script lies four folders above the copy of the example, which is how the copy is found.
def example = basedir.toPath()
4.times { example = example.parent }
def name = example.fileName.toString()
def verdict = example.parent.fileName.toString() == 'broken' ? 'broken' : 'rejected'

def expected = example.resolve('expected.txt').toFile().readLines('UTF-8')
def log = example.resolve('build.log')
def errors = log.toFile().readLines('UTF-8')
    .findAll { it.startsWith('[ERROR] ') }
    .collect { it.substring('[ERROR] '.length()) }
    .collect { it.replaceFirst('^Failed to execute goal .* on project [^:]+: ', '') }
    .collect { it.replaceFirst(' -> \\[Help 1\\]$', '') }

if (expected.empty || Collections.indexOfSubList(errors, expected) < 0) {
  throw new IllegalStateException(
      "${name} was not ${verdict} as expected. Expected:\n${expected.join('\n')}\n"
      + "Found:\n${errors.join('\n')}")
}

// System.out is the log while this runs; this is for the console.
def console = new PrintStream(new FileOutputStream(FileDescriptor.out), true, 'UTF-8')
console.print(
    "\n${name}: ${verdict} as expected\n"
    + expected.collect { "    ${it}\n" }.join('')
    + "    full log of this build: ${log}\n\n")
return true
