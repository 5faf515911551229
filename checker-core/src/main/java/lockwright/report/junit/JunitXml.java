package lockwright.report.junit;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import lockwright.report.Shown;
import lockwright.report.result.CheckedBox;
import lockwright.report.result.Instance;
import lockwright.report.result.Movements;

/**
 * Verdicts in the XML that build servers read of JUnit: a suite a box, a case a requirement.
 * Broken, empty and impossible ones are failures, undecided ones errors; those that are expected or
 * waived, and hold, and those that are exempted are skipped with the reason, for they are not
 * proved. No time is written.
 */
public final class JunitXml {
  private final CheckedBox box;
  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter xml;

  private JunitXml(CheckedBox box) throws XMLStreamException {
    this.box = box;
    xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
  }

  /**
   * The file, to be written in UTF-8. The same result gives the same characters.
   *
   * @param result the bytes of {@code result.json}
   * @throws IllegalArgumentException if it does not hang together
   */
  public static String of(byte[] result) {
    try {
      JunitXml junit = new JunitXml(CheckedBox.read(result));
      junit.write();
      return junit.text.toString();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("nothing but elements and words is written", e);
    }
  }

  private void write() throws XMLStreamException {
    xml.writeStartDocument("UTF-8", "1.0");
    line();
    xml.writeStartElement("testsuites");
    numbers();
    line();
    xml.writeStartElement("testsuite");
    attribute("name", box.name());
    numbers();
    line();
    xml.writeStartElement("properties");
    int number = 0;
    for (String caution : box.cautions()) {
      property("caution " + ++number, caution);
    }
    property("version", box.version());
    for (var file : box.digests().entrySet()) {
      property("SHA-256 of " + file.getKey(), file.getValue());
    }
    line();
    xml.writeEndElement();
    for (Instance instance : box.requirements()) {
      testCase(instance);
    }
    for (CheckedBox.Exempted exempted : box.exempted()) {
      start(exempted.name(), exempted.id());
      line();
      xml.writeEmptyElement("skipped");
      attribute("message", "exempted by name, and not checked: " + exempted.reason());
      xml.writeEndElement();
    }
    if (!box.somethingProved()) {
      start("something is proved", box.name());
      told("failure", "nothing proved", List.of("no requirement of safety is proved"));
      xml.writeEndElement();
    }
    line();
    xml.writeStartElement("system-out");
    lines(box.cautions());
    xml.writeEndElement();
    line();
    xml.writeEndElement();
    line();
    xml.writeEndElement();
    line();
    xml.writeEndDocument();
    xml.close();
  }

  private void numbers() throws XMLStreamException {
    long errors = box.requirements().stream().filter(JunitXml::error).count();
    long failing = box.requirements().stream().filter(Instance::fails).count();
    int more = box.somethingProved() ? 0 : 1;
    int exempted = box.exempted().size();
    long skipped = box.requirements().stream().filter(JunitXml::skipped).count() + exempted;
    attribute("tests", Long.toString(box.requirements().size() + exempted + more));
    attribute("failures", Long.toString(failing - errors + more));
    attribute("errors", Long.toString(errors));
    attribute("skipped", Long.toString(skipped));
  }

  private static boolean error(Instance instance) {
    return instance.fails() && instance.verdict().equals("undecided");
  }

  private static boolean skipped(Instance instance) {
    return !instance.fails() && !instance.good();
  }

  private void testCase(Instance instance) throws XMLStreamException {
    start(instance.name(), instance.id());
    if (skipped(instance)) {
      line();
      xml.writeEmptyElement("skipped");
      String words = instance.expected().orElseThrow().words();
      attribute("message", instance.verdict() + ", " + words);
    } else if (instance.fails()) {
      List<String> lines = new ArrayList<>(List.of(instance.found()));
      instance.beginning().ifPresent(b -> lines.add("beginning: " + b));
      int number = 0;
      for (Movements.Line line : instance.movements()) {
        String moved = line.moved().isEmpty() ? "" : ": " + line.moved();
        lines.add(++number + ". " + line.done() + moved);
      }
      instance.perhapsMissing().ifPresent(m -> lines.add("perhaps missing, a draft: " + m));
      instance.things().forEach(t -> lines.add(t.words() + ": " + t.file() + ":" + t.line()));
      told(error(instance) ? "error" : "failure", type(instance), lines);
    }
    xml.writeEndElement();
  }

  private static String type(Instance instance) {
    return instance.expected().map(Instance.Expected::state).orElse(instance.verdict());
  }

  private void start(String of, String name) throws XMLStreamException {
    line();
    xml.writeStartElement("testcase");
    attribute("classname", box.name() + "." + of);
    attribute("name", name);
  }

  private void told(String element, String type, List<String> lines) throws XMLStreamException {
    line();
    xml.writeStartElement(element);
    attribute("type", type);
    attribute("message", lines.get(0));
    lines(lines);
    xml.writeEndElement();
  }

  private void property(String name, String value) throws XMLStreamException {
    line();
    xml.writeEmptyElement("property");
    attribute("name", name);
    attribute("value", value);
  }

  private void attribute(String name, String value) throws XMLStreamException {
    xml.writeAttribute(name, Shown.line(value));
  }

  private void lines(List<String> lines) throws XMLStreamException {
    xml.writeCharacters(String.join("\n", Shown.lines(lines)));
  }

  private void line() throws XMLStreamException {
    xml.writeCharacters("\n");
  }
}
