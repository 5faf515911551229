// Holds the log of builds that failed by design against the expected.txt of each: these very lines, one
// after the other, must be among the errors of its project. Shows them, and where the rest is.

// The script lies three folders above the copies of the examples, which is how they are found.
def group = basedir.toPath()
3.times { group = group.parent }
def verdict = group.fileName.toString() == 'broken' ? 'broken' : 'rejected'

// Each failure is told in the end, beginning with its project; what is said before is of no project here.
def log = group.resolve('build.log')
def errors = [:].withDefault { [] }
def project = null
log.toFile().readLines('UTF-8')
    .findAll { it.startsWith('[ERROR] ') }
    .collect { it.substring('[ERROR] '.length()) }
    .each {
      def failure = it =~ /^Failed to execute goal .* on project ([^:]+): (.*)$/
      project = failure ? failure[0][1] : project
      errors[project] << (failure ? failure[0][2] : it).replaceFirst(' -> \\[Help \\d+\\]$', '')
    }

// This is for the console; System.out is the log while this runs.
def console = new PrintStream(new FileOutputStream(FileDescriptor.out), true, 'UTF-8')
def examples = group.toFile().listFiles({ new File(it, 'pom.xml').exists() } as FileFilter).toList().sort()
if (examples.empty) {
  throw new IllegalStateException("no example in ${group}")
}
examples.each {
  def expected = new File(it, 'expected.txt').readLines('UTF-8')
  def id = new groovy.xml.XmlSlurper().parse(new File(it, 'pom.xml')).artifactId.text()
  def found = errors[null] + errors[id]
  def at = Collections.lastIndexOfSubList(found, expected)
  // What is said of its own failure has to be among them.
  if (expected.empty || at < 0 || at + expected.size() <= errors[null].size()) {
    throw new IllegalStateException(
        "${it.name} was not ${verdict} as expected. Expected:\n${expected.join('\n')}\n"
        + "Found:\n${found.join('\n')}")
  }
  console.print(
      "\n${it.name}: ${verdict} as expected\n"
      + expected.collect { line -> "    ${line}\n" }.join('')
      + "    full log of the builds: ${log}\n\n")
}
return true
